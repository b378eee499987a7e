namespace Plumbmark.House.Tests.Docs;

/// <summary>
/// Every command that a document shows is run, and what it prints is compared. In a block marked <c>console</c> a line <c>$ command</c>
/// is followed by what it prints; a block marked with a language and a file's name, as <c>json small.json</c>, puts that file there first.
/// </summary>
public sealed class ConsoleDocs(Sittings sittings) : IClassFixture<Sittings>
{
    public static TheoryData<string> Documents => [.. Markdown.All.Where(d => d.Blocks.Any(b => b.Words == "console")).Select(d => d.Path)];

    [Theory]
    [MemberData(nameof(Documents))]
    public async Task Commands_PrintWhatTheDocumentShows(string path)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "The documents show a POSIX shell.");
        House.MatchesFile(await sittings.Of(path), path.Split('/'));
    }
}
