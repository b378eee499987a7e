using System.Net;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Web.Tests.Hostile;

/// <summary>A backup may bring anything under the name of a picture (CWE-434): a page or a script in it is never sent as one.</summary>
public sealed class SpitefulBackupTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("text/html", "<script src=\"b\"></script>", HttpStatusCode.NotFound, "")]
    [InlineData("text/javascript", "alert(1)", HttpStatusCode.NotFound, "")]
    [InlineData("image/svg+xml", "<svg xmlns=\"http://www.w3.org/2000/svg\" onload=\"alert(1)\"/>", HttpStatusCode.NotFound, "")]
    [InlineData("image/jpeg\r\nSet-Cookie: plumbmark-phone=1", "nothing", HttpStatusCode.NotFound, "")]
    [InlineData("text/html", "\u00FF\u00D8\u00FF<script>alert(1)</script>", HttpStatusCode.OK, "image/jpeg")]
    [InlineData("text/html\r\nX: y", "\u0089PNG\r\n\u001A\n<script>alert(1)</script>", HttpStatusCode.OK, "image/png")]
    public async Task Picture_OfABackup_IsSentAsAPicture_OrNotAtAll(string type, string content, HttpStatusCode status, string sentAs)
    {
        await using var other = await RunningApp.Start();
        var car = other.Journals.Add(DemoCar.File());
        var name = other.Journals.KeepPhoto(car.Id, type, System.Text.Encoding.Latin1.GetBytes(content))!;
        await using var app = await RunningApp.Start();
        app.Journals.Restore(other.Journals.Backup());
        var answer = await app.Client.GetAsync($"/cars/1/bench/photos/{name}", Stop);
        Assert.Equal(status, answer.StatusCode);
        Assert.False(answer.Headers.Contains("Set-Cookie"));
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        if (status == HttpStatusCode.OK)
        {
            Assert.Equal(sentAs, answer.Content.Headers.ContentType!.MediaType);
        }
        else
        {
            Assert.DoesNotContain("alert(1)", await answer.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
        }
    }
}
