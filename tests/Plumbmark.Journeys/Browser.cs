using Microsoft.Playwright;
using Plumbmark.Journeys;

[assembly: AssemblyFixture(typeof(Browser))]

namespace Plumbmark.Journeys;

/// <summary>One real browser for all journeys; each journey has a context of its own.</summary>
public sealed class Browser : IAsyncLifetime
{
    private static readonly string[] s_places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public async ValueTask InitializeAsync()
    {
        _playwright = await Playwright.CreateAsync();
        // Journeys of several areas share few cores; slowness is measured elsewhere.
        Assertions.SetDefaultExpectTimeout(60_000);
        _browser = await _playwright.Chromium.LaunchAsync(
            new BrowserTypeLaunchOptions
            {
                ExecutablePath = s_places.First(File.Exists),
                Args =
                [
                    "--no-sandbox",
                    // A name of the home network: over plain http to it, a browser offers as little as a phone does.
                    "--host-resolver-rules=MAP *.local 127.0.0.2",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                ],
            }
        );
    }

    /// <summary>A visitor's own window: by default a phone of 360 × 740 in the light, at the app's own address.</summary>
    public async Task<IPage> Open(
        AppProcess app,
        int width = 360,
        int height = 740,
        bool script = true,
        bool dark = false,
        string? address = null
    )
    {
        var context = await _browser!.NewContextAsync(
            new BrowserNewContextOptions
            {
                BaseURL = address ?? app.Address,
                ViewportSize = new ViewportSize { Width = width, Height = height },
                DeviceScaleFactor = 2,
                JavaScriptEnabled = script,
                ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
                HasTouch = true,
                Locale = "en-GB",
            }
        );
        app.IsVisitedBy(context);
        context.SetDefaultTimeout(60_000);
        return await context.NewPageAsync();
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
    }
}
