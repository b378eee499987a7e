using System.Text;

namespace Plumbmark.Drawing.Pictures;

/// <summary>Every ink and lettering of the drawings, in one place: the style sheet and the printed page are both made from it.</summary>
/// <remarks>
/// Blue, rust red and brown stay apart for the common forms of colour blindness and in grey print; no meaning rests on colour alone.
/// Contrast on white is 4.5:1 or more for everything that must be read (WCAG 2.2, 1.4.3).
/// </remarks>
public static class Palette
{
    private const string Dark = "#13262d";
    private const string Grey = "#46575e";
    private const string Pale = "#c0c8cb";
    private const string Blue = "#0a4a94";
    private const string Vermilion = "#9c2f00";
    private const string Brown = "#57420a";
    private const string Teal = "#0f4c5c";
    private const string White = "#ffffff";

    /// <summary>On screen each colour is a variable of the page, so that the drawing follows it into the dark; printed, it is itself.</summary>
    private static readonly (string Colour, string Variable)[] s_variables =
    [
        (Dark, "--ink"),
        (Grey, "--quiet"),
        (Pale, "--line"),
        (Blue, "--true"),
        (Vermilion, "--out"),
        (Brown, "--open"),
        (Teal, "--accent"),
        (White, "--card"),
    ];

    /// <summary>The frame as measured, exaggerated.</summary>
    public static Ink Frame { get; } = new("frame", Dark, 2.2);

    /// <summary>The far side of the frame, seen through the near one.</summary>
    public static Ink FarSide { get; } = new("far-side", Dark, 1.6, null, [7, 3]);

    /// <summary>The frame as it should be.</summary>
    public static Ink Should { get; } = new("should", Grey, 1, null, [1.5, 2.5]);

    /// <summary>A part of the frame that is only sketched.</summary>
    public static Ink Sketched { get; } = new("sketched", Grey, 1.2, null, [4, 3]);

    /// <summary>The centre line.</summary>
    public static Ink Centre { get; } = new("centre", Grey, 0.9, null, [10, 3, 2, 3]);

    /// <summary>A length that has been measured.</summary>
    public static Ink Measured { get; } = new("measured", Pale, 0.8);

    /// <summary>A reading that the fit does not believe.</summary>
    public static Ink Doubted { get; } = new("doubted", Vermilion, 1.8, null, [6, 4]);

    /// <summary>The reading to take next.</summary>
    public static Ink Next { get; } = new("next", Teal, 3);

    /// <summary>From where a point should be to where it is.</summary>
    public static Ink Shift { get; } = new("shift", Dark, 1.4);

    /// <summary>Where a point may be.</summary>
    public static Ink Ring { get; } = new("ring", Grey, 0.9);

    /// <summary>A point that is true.</summary>
    public static Ink True { get; } = new("true", Blue, 1.2, Blue);

    /// <summary>A point that is out.</summary>
    public static Ink Out { get; } = new("out", Vermilion, 1.2, Vermilion);

    /// <summary>The bar inside the mark of a point that is out.</summary>
    public static Ink OutBar { get; } = new("out-bar", White, 2);

    /// <summary>A point that the readings cannot tell yet.</summary>
    public static Ink CannotTell { get; } = new("cannot-tell", Brown, 2, White);

    /// <summary>A measured point with no verdict.</summary>
    public static Ink NoVerdict { get; } = new("no-verdict", Dark, 1.4, White);

    /// <summary>A point known from its sketch only.</summary>
    public static Ink Hollow { get; } = new("hollow", Grey, 1.4, White, [2, 2]);

    /// <summary>The point just picked.</summary>
    public static Ink Picked { get; } = new("picked", Teal, 3);

    /// <summary>From a point to its name.</summary>
    public static Ink Leader { get; } = new("leader", Pale, 0.7);

    /// <summary>White behind words that stand on lines.</summary>
    public static Ink Plate { get; } = new("plate", null, 0, White);

    /// <summary>Unseen; makes the space around a point tappable.</summary>
    public static Ink Touch { get; } = new("touch", null, 0);

    /// <summary>A tick or a rule of a scale.</summary>
    public static Ink Rule { get; } = new("rule", Grey, 0.8);

    /// <summary>A box to write in.</summary>
    public static Ink Box { get; } = new("box", Dark, 0.8, White);

    /// <summary>A point's name.</summary>
    public static Lettering Name { get; } = new("name", 14, Dark, IsBold: true);

    /// <summary>Something said about a point or a line.</summary>
    public static Lettering Note { get; } = new("note", 13, Dark);

    /// <summary>Something said about the whole drawing.</summary>
    public static Lettering Remark { get; } = new("remark", 12.5, Grey);

    /// <summary>The word out.</summary>
    public static Lettering OutWord { get; } = new("out-word", 13, Vermilion, IsBold: true);

    /// <summary>A doubted reading's words.</summary>
    public static Lettering DoubtedWord { get; } = new("doubted-word", 13, Vermilion, IsBold: true);

    /// <summary>The next reading's words.</summary>
    public static Lettering NextWord { get; } = new("next-word", 13, Teal, IsBold: true);

    /// <summary>The sign inside a point's mark.</summary>
    public static Lettering Sign { get; } = new("sign", 9, Brown, IsBold: true);

    private static readonly Ink[] s_inks =
    [
        Frame,
        FarSide,
        Should,
        Sketched,
        Centre,
        Measured,
        Doubted,
        Next,
        Shift,
        Ring,
        True,
        Out,
        OutBar,
        CannotTell,
        NoVerdict,
        Hollow,
        Picked,
        Leader,
        Plate,
        Touch,
        Rule,
        Box,
    ];

    private static readonly Lettering[] s_letterings = [Name, Note, Remark, OutWord, DoubtedWord, NextWord, Sign];

    /// <summary>The style sheet for drawings on screen.</summary>
    public static string StyleSheet { get; } = WriteStyleSheet();

    private static string WriteStyleSheet()
    {
        var css = new StringBuilder();
        css.Append(".drawing{display:block;width:100%;height:auto;font-family:inherit}\n");
        css.Append(".drawing a:focus-visible{outline:3px solid ").Append(OnScreen(Teal)).Append(";outline-offset:2px}\n");
        foreach (var ink in s_inks)
        {
            css.Append(".ink-").Append(ink.Name).Append('{');
            css.Append(string.Join(';', SvgAttributes.Of(ink).Select(a => $"{a.Name}:{OnScreen(a.Value)}"))).Append("}\n");
        }

        foreach (var lettering in s_letterings)
        {
            css.Append(".words-").Append(lettering.Name).Append('{');
            css.Append(string.Join(';', SvgAttributes.Of(lettering).Select(a => $"{a.Name}:{OnScreen(a.Value)}"))).Append("}\n");
        }

        return css.ToString();
    }

    private static string OnScreen(string value)
    {
        var variable = Array.Find(s_variables, v => v.Colour == value).Variable;
        return variable is null ? value : $"var({variable},{value})";
    }
}
