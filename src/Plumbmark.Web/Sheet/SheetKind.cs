using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Sheet;

/// <summary>A kind of sheet.</summary>
/// <param name="Word">Its word in addresses.</param>
/// <param name="Name">What it is called.</param>
/// <param name="For">Whom it is for.</param>
public sealed record SheetKind(string Word, string Name, string For)
{
    /// <summary>Two moments on one page.</summary>
    public const string BeforeAfter = "before-after";

    /// <summary>The form to fill in by hand.</summary>
    public const string Form = "form";

    /// <summary>Every kind.</summary>
    public static IReadOnlyList<SheetKind> All { get; } =
    [
        new("frame", Say("sheet.frame-sheet"), Say("sheet.for-the-club-the")),
        new("workshop", Say("sheet.workshop-sheet"), Say("sheet.for-a-frame-shop")),
        new(BeforeAfter, Say("sheet.before-and-after"), Say("sheet.two-moments-on-one")),
        new(Form, Say("sheet.blank-form"), Say("sheet.to-fill-in-with")),
        new("parts", Say("sheet.parts-sheet"), Say("sheet.the-loose-parts-what")),
        new("press", Say("sheet.press-record"), Say("sheet.every-bite-as-it")),
        new("road", Say("sheet.road-sheet"), Say("sheet.what-the-wheels-will")),
    ];
}
