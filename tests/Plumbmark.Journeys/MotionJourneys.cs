using Microsoft.Playwright;

namespace Plumbmark.Journeys;

/// <summary>Who asked his device for less motion gets none: nothing slides, fades or scrolls by itself.</summary>
public sealed class MotionJourneys(Browser browser)
{
    private const string Moving = """
        () => [...document.querySelectorAll('*')]
          .filter(e => {
            const s = getComputedStyle(e);
            return s.animationName !== 'none' || s.transitionDuration.split(',').some(d => parseFloat(d) > 0) || s.scrollBehavior === 'smooth';
          })
          .map(e => e.outerHTML.slice(0, 80))
        """;

    [Fact]
    public async Task ReducedMotion_StopsEverythingThatMoves_AndOnlyThen()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/floor");
        Assert.NotEmpty(await page.EvaluateAsync<string[]>(Moving)); // the page scrolls smoothly for everybody else, so this can fail
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { ReducedMotion = ReducedMotion.Reduce });
        foreach (var address in new[] { "/", "/cars/1/floor", "/cars/1/floor?round=1#value", "/cars/1/turning", "/first/1" })
        {
            await page.GotoAsync(address);
            Assert.Empty(await page.EvaluateAsync<string[]>(Moving));
            Assert.Equal(0, await page.EvaluateAsync<int>("document.getAnimations().length"));
        }
    }
}
