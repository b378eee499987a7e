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
        new("frame", "Frame sheet", "For the club, the buyer, yourself in two years: drawing, readings, verdicts, and what is not known."),
        new("workshop", "Workshop sheet", "For a frame shop: what to move, which way, how much, and what to measure meanwhile."),
        new(BeforeAfter, "Before and after", "Two moments on one page, and whether the change is more than measuring twice would give."),
        new(Form, "Blank form", "To fill in with a pencil beside the frame, in walking order, and type in later."),
        new("parts", "Parts sheet", "The loose parts: what to do with each, why, against what it was held, and whose limit it is."),
        new("press", "Press record", "Every bite as it was read, what it told, the set-up, and every crack test."),
        new("road", "Road sheet", "What the wheels will do, what makes it, and what the adjusters can reach."),
    ];
}
