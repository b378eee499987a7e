namespace Plumbmark.House.Tests.Api;

/// <summary>The public face of Engine and Inspection in plain text, so that a change of it is seen in review.</summary>
public class PublicApiSnapshots
{
    [Theory]
    [InlineData("Plumbmark.Engine")]
    [InlineData("Plumbmark.Inspection")]
    public void PublicApi_IsAsWrittenDown(string project) =>
        House.MatchesFile(PublicApi.Of(House.AssemblyOf(project)), "docs", "api", $"{project}.txt");
}
