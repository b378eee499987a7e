using System.CommandLine;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Book.Checks;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark book check FILE [--json]</c>: what do book pages say against themselves?</summary>
internal static class BookVerb
{
    public static Command Command(Output output)
    {
        var file = new Argument<string>("FILE") { Description = Texts.Say("verb.book.a-book-file-or-a") };
        var json = new Option<bool>("--json") { Description = Texts.Say("verb.book.print-one-json-object") };
        var check = new Command("check", Texts.Say("verb.book.what-do-the-pages-say")) { file, json };
        check.SetAction(parsed => Run(new BookOptions(parsed.GetValue(file)!, parsed.GetValue(json)), output));
        var schema = new Command("schema", Texts.Say("verb.book.print-the-json-schema-of"));
        schema.SetAction(_ =>
        {
            output.Result(BookFile.Schema());
            return ExitCode.True;
        });
        return new Command("book", Texts.Say("verb.book.work-with-book-pages-what")) { check, schema };
    }

    public static int Run(BookOptions options, Output output)
    {
        var bytes = CarFileArgument.Bytes(options.File);
        int Refused(IReadOnlyList<Fault> faults) => CarFileArgument.Refuse(options.File, output, faults, options.AsJson);
        return IsCarFile(bytes)
            ? CarFileReader.Read(bytes).Match(car => Answer(car.Book.Pages, car, options, output), Refused)
            : BookFile.Read(bytes).Match(pages => Answer(pages, null, options, output), Refused);
    }

    private static int Answer(IReadOnlyList<BookPage> pages, CarFile? car, BookOptions options, Output output)
    {
        var report = BookReport.Of(pages, car);
        if (options.AsJson)
        {
            output.Result(BookReportJson.Bytes(report));
        }
        else
        {
            output.Result(BookText.Of(report));
        }

        return report.Pages.Any(p => p.Findings.Any(f => f.IsContradiction)) ? ExitCode.Out : ExitCode.True;
    }

    private static bool IsCarFile(byte[] bytes) =>
        JsonText.Read(bytes, new Faults())?.Members.Any(m => m.Name == "format" && m.Value.Text == CarFile.Format) == true;
}

/// <summary>What <c>plumbmark book check</c> was asked.</summary>
/// <param name="File">A path, or <c>-</c> for standard input.</param>
/// <param name="AsJson">Whether to print JSON.</param>
internal sealed record BookOptions(string File, bool AsJson);
