using Microsoft.Playwright;

namespace Plumbmark.Journeys;

/// <summary>A phone behind a wire that is cut, with a person who goes on entering.</summary>
internal sealed class CutPhone(Browser browser, AppProcess app, string name, Func<int> appPort) : IAsyncDisposable
{
    private const string Waiting =
        "new Promise(done => { const open = indexedDB.open('plumbmark'); open.onsuccess = () => { const db = open.result; "
        + "const all = db.transaction('waiting').objectStore('waiting').count(); all.onsuccess = () => { db.close(); done(all.result); }; }; })";

    private IBrowserContext? _context;
    private IPage? _page;

    public string Name { get; } = name;

    public CutWire Wire { get; } = new(appPort);

    /// <summary>The note of every reading entered, in order.</summary>
    public List<string> Entered { get; } = [];

    public int Posts => Wire.Posts;

    public async Task Open()
    {
        if (_context is null)
        {
            _page = await browser.Open(app, address: Wire.Address);
            _context = _page.Context;
        }
        else
        {
            _page = await _context.NewPageAsync();
        }

        _page.SetDefaultTimeout(120_000); // a machine that also builds and tests may be very slow
        // The other phone may just have had the app killed.
        for (var left = 50; ; left--)
        {
            try
            {
                await _page.GotoAsync("/cars/1/floor");
                break;
            }
            catch (Exception e) when (e is PlaywrightException or TimeoutException && left > 0)
            {
                await Task.Delay(200);
            }
        }
    }

    /// <summary>Types a reading and presses the button; back when the form stands ready for the next, kept or waiting.</summary>
    public async Task Enter()
    {
        var note = $"{Name}{Entered.Count + 1}";
        Entered.Add(note);
        var form = await _page!.EvaluateAsync<string>(
            """
            (note) => {
              const form = document.querySelector(".floor-entry[data-waits]");
              const set = (name, value) => (form.elements.namedItem(name).value = value);
              set("from", "A.L");
              set("to", "B.R");
              set("value", "31 1/2");
              set("note", note);
              const name = form.elements.namedItem("form").value;
              form.requestSubmit();
              return name;
            }
            """,
            note
        );
        await _page.WaitForFunctionAsync(
            "(name) => document.querySelector('.floor-entry[data-waits] [name=form]')?.value !== name && !document.querySelector('form[data-keeping]')",
            form
        );
    }

    public Task CloseTab() => _page!.CloseAsync();

    public Task SayOnline() => _page!.EvaluateAsync("dispatchEvent(new Event('online'))");

    /// <summary>Waits until nothing waits on the phone any more.</summary>
    public async Task Empty()
    {
        for (var left = 600; await _page!.EvaluateAsync<int>(Waiting) > 0; left--)
        {
            Assert.True(left > 0, $"Phone {Name} still has readings waiting after the wire was mended.");
            await Task.Delay(200);
        }
    }

    public async ValueTask DisposeAsync() => await Wire.DisposeAsync();
}
