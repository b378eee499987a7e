using Plumbmark.Drawing.Exchange;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Web.Tests.Hostile;

/// <summary>What a car is called goes into the head of an answer (CWE-113) and into somebody's folder (CWE-22): as letters, digits and dashes only.</summary>
public sealed class DownloadNameTests
{
    [Theory]
    [InlineData("a\r\nSet-Cookie: plumbmark-phone=1", "a-set-cookie-plumbmark-phone-1")]
    [InlineData("../../etc/passwd", "etc-passwd")]
    [InlineData("\"; filename=evil.exe", "filename-evil-exe")]
    [InlineData("\u202Efdp.exe", "fdp-exe")]
    [InlineData("автомобиль", "car")]
    [InlineData("CON", "con")]
    public async Task Name_OfAFileToKeep_IsHarmless(string name, string expected)
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File() with { Car = DemoCar.File().Car with { Name = name } });
        var addresses = Extract
            .All.Take(3)
            .Select(e => ($"extracts/{e.Word}", $"{expected}-{e.Word}.{e.Ending}"))
            .Append(("file", $"{expected}.json"));
        foreach (var (address, file) in addresses)
        {
            var answer = await app.Client.GetAsync($"/cars/{car.Id}/{address}", TestContext.Current.CancellationToken);
            Assert.Equal(200, (int)answer.StatusCode);
            Assert.Equal(file, answer.Content.Headers.ContentDisposition!.FileName);
            Assert.False(answer.Headers.Contains("Set-Cookie"));
        }
    }

    [Fact]
    public async Task Name_WithoutEnd_IsCut()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File() with { Car = DemoCar.File().Car with { Name = new string('x', 60_000) } });
        var answer = await app.Client.GetAsync($"/cars/{car.Id}/file", TestContext.Current.CancellationToken);
        Assert.InRange(answer.Content.Headers.ContentDisposition!.FileName!.Length, 10, 70);
    }
}
