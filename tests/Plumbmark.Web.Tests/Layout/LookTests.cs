using Plumbmark.Web.Server;

namespace Plumbmark.Web.Tests.Layout;

/// <summary>A look is chosen once and kept in the browser; going back leads only to a page of our own.</summary>
public sealed class LookTests
{
    [Fact]
    public async Task Look_IsKept_AndGoesBackWhereItWasChosen()
    {
        await using var app = await RunningApp.Start();
        Assert.Null((await app.Get("/")).Document.DocumentElement.GetAttribute("data-look"));
        var page = await app.Get("/look?back=/first");
        page = await app.Submit(page, "/looks", ("look", "sun"));
        Assert.Equal("/first", page.Path);
        Assert.Equal("sun", page.Document.DocumentElement.GetAttribute("data-look"));
        Assert.Equal("sun", (await app.Get("/")).Document.DocumentElement.GetAttribute("data-look"));
    }

    [Theory]
    [InlineData("/cars/1/floor?kind=plan", "/cars/1/floor?kind=plan")]
    [InlineData("//elsewhere.example", "/")]
    [InlineData("https://elsewhere.example", "/")]
    [InlineData("/\\elsewhere.example", "/")]
    [InlineData("", "/")]
    public void Back_IsAPathOfOurOwn(string address, string expected) => Assert.Equal(expected, Look.Back(address));
}
