using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Book.Paste;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;
using Plumbmark.Store;
using Plumbmark.Web.Layout;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Book;

/// <summary>The book's first page: its pages, what is open for this car, and the ways to bring pages in.</summary>
/// <param name="Car">The car.</param>
/// <param name="Report">The pages with their findings, and the book seen for this car.</param>
/// <param name="Typed">What was typed into the form that is shown again.</param>
/// <param name="Faults">What is wrong with it.</param>
/// <param name="Refused">Faults of a file or block, one sentence each.</param>
public sealed record BookIndexView(
    OpenCar Car,
    BookReport Report,
    IReadOnlyDictionary<string, string> Typed,
    FieldFaults Faults,
    IReadOnlyList<string> Refused
)
{
    /// <summary>The fields of the paste form.</summary>
    internal static readonly string[] Fields = ["title", "book", "edition", "page", "units", "block", "serialFrom", "serialTo"];

    /// <summary>A hint on the headings that are known.</summary>
    public static string Headings => Texts.List(PasteHeadings.Offered);

    /// <summary>The page for a request.</summary>
    public static BookIndexView Of(CarRequest request, FieldFaults? faults = null, IReadOnlyList<string>? refused = null) =>
        new(
            request.Car,
            BookReport.Of(request.Car.File.Book.Pages, request.Car.File),
            Fields.ToDictionary(f => f, request.Field, StringComparer.Ordinal),
            faults ?? new FieldFaults(),
            refused ?? []
        );

    /// <summary>The sentences of a refused file.</summary>
    public static IReadOnlyList<string> Sentences(IReadOnlyList<Fault> faults) => [.. faults.Select(f => f.ToString())];

    /// <summary>What is open or in doubt for this car.</summary>
    public IEnumerable<SubjectAnswer> Open => Report.ForCar!.Subjects.Where(s => s.Choice is not FigureChoice.Applies);

    /// <summary>What applies to this car.</summary>
    public IEnumerable<SubjectAnswer> Settled => Report.ForCar!.Subjects.Where(s => s.Choice is FigureChoice.Applies);

    /// <summary>What the car is fitted with, one to a line as it is typed.</summary>
    public string Fitted => string.Join("; ", Car.File.Book.Attributes.Select(a => $"{a.Name}: {a.Value}"));

    /// <summary>How a page stands, in a few words.</summary>
    public static string Standing(PageReport report)
    {
        var contradictions = report.Findings.Count(f => f.IsContradiction);
        var remarks = report.Findings.Count - contradictions;
        return (contradictions, remarks) switch
        {
            (0, 0) => Say("book.index.nothing-found-against-it"),
            (0, _) => Say("book.index.left-open", remarks),
            (_, 0) => Say("book.index.contradicting", contradictions),
            _ => Say("book.index.contradicting-left-open", contradictions, remarks),
        };
    }
}
