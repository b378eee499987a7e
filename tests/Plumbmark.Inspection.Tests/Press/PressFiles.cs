using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Press;
using Plumbmark.Testing;

namespace Plumbmark.Inspection.Tests.Press;

/// <summary>Press jobs read from text.</summary>
internal static class PressFiles
{
    public static PressJob Job(string text) =>
        CarFileReader
            .Read(text.Utf8())
            .Match(file => file.Press[0], faults => throw new InvalidOperationException(string.Join('\n', faults)));

    public static IReadOnlyList<string> FaultsOf(string text) =>
        CarFileReader.Read(text.Utf8()).Match<IReadOnlyList<string>>(_ => [], faults => [.. faults.Select(f => f.ToString())]);

    public static PressReport Report(string text) => PressReport.Of(Job(text));
}
