using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Car.Json;

/// <summary>One thing wrong with a file: where it stands, what was found there and what is allowed instead.</summary>
/// <param name="Path">The place in the file's own terms, such as <c>readings[3].value</c>; empty for the file as a whole.</param>
/// <param name="Line">The line, counted from 1; 0 when the fault has no single place.</param>
/// <param name="Column">The column in characters, counted from 1; 0 when the fault has no single place.</param>
/// <param name="Sentence">What was found and what is allowed, as one or two sentences for a person.</param>
public sealed record Fault(string Path, int Line, int Column, string Sentence)
{
    /// <summary>Where in the file's own terms; fit to print.</summary>
    public string Path { get; init; } = Printable.Of(Path);

    /// <summary>What was found and what is allowed; fit to print.</summary>
    public string Sentence { get; init; } = Printable.Of(Sentence);

    /// <summary>The whole fault on one line: place first, then the sentence.</summary>
    public override string ToString()
    {
        var place = Line > 0 ? Texts.Say("car.fault.line-column", Line, Column) : "";
        var where = (Path.Length, place.Length) switch
        {
            (0, 0) => "",
            (0, _) => $"{place}: ",
            (_, 0) => $"{Path}: ",
            _ => $"{Path} ({place}): ",
        };
        return where + Sentence;
    }
}
