using Plumbmark.Inspection.Book;
using Plumbmark.Store;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Book;

/// <summary>One figure, to be doubted, corrected, believed again, or measured on a car.</summary>
/// <param name="Car">The car.</param>
/// <param name="Page">The page.</param>
/// <param name="Line">The figure as it is shown.</param>
/// <param name="Figure">The figure.</param>
/// <param name="Typed">What was typed into the form that is shown again.</param>
/// <param name="Faults">What is wrong with it.</param>
public sealed record FigureView(
    OpenCar Car,
    BookPage Page,
    FigureLine Line,
    BookDimension Figure,
    IReadOnlyDictionary<string, string> Typed,
    FieldFaults Faults
)
{
    private static readonly string[] s_fields = ["judgement", "value", "reason", "evidence", "car", "measured", "note"];

    /// <summary>What can be said of a figure.</summary>
    public static IReadOnlyList<(string Value, string Text)> Judgements { get; } =
    [
        ("doubted", Say("book.figure.doubted-leave-it-out")),
        ("corrected", Say("book.figure.corrected-use-another-value")),
        ("printed", Say("book.figure.taken-as-printed")),
    ];

    /// <summary>The view for a request, its figure named by the address or by the form; null when there is none.</summary>
    public static FigureView? Of(CarRequest request, FieldFaults? faults = null)
    {
        var page = request.Car.File.Book.Page(Given(request, "page"));
        return page?.Dimension(Given(request, "figure")) is { } figure
            ? new FigureView(
                request.Car,
                page,
                FigureLine.Of(page, figure, SerialFit.CannotTell),
                figure,
                s_fields.ToDictionary(f => f, request.Field, StringComparer.Ordinal),
                faults ?? new FieldFaults()
            )
            : null;
    }

    internal static string Given(CarRequest request, string name) =>
        request.Field(name) is { Length: > 0 } sent ? sent : request.Query(name);
}
