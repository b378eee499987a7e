using Microsoft.Playwright;

namespace Plumbmark.Journeys;

/// <summary>A phone behind a wire that is cut, with a person who goes on entering.</summary>
internal sealed class CutPhone(Browser browser, AppProcess app, string name, Func<int> appPort) : IAsyncDisposable
{
    private const string Waiting =
        "new Promise(done => { const open = indexedDB.open('plumbmark'); open.onsuccess = () => { const db = open.result; "
        + "const all = db.transaction('waiting').objectStore('waiting').count(); all.onsuccess = () => { db.close(); done(all.result); }; }; })";

    // A photo is as many pixels wide as its number says: so it can be told from every other when it has been drawn anew.
    private const string Fill = """
        async ({ action, fields, note, label, count, tall }) => {
          const form = document.querySelector(`main form[data-waits][action='${action}']`);
          fields.forEach((f) => (form.elements.namedItem(f.split("=")[0]).value = f.split("=")[1]));
          if (note) {
            form.elements.namedItem(note).value = label;
          } else {
            const canvas = Object.assign(document.createElement("canvas"), { width: 100 + count, height: tall });
            const files = new DataTransfer();
            files.items.add(new File([await new Promise((done) => canvas.toBlob(done))], `${label}.png`, { type: "image/png" }));
            form.elements.namedItem("photo").files = files.files;
          }

          const name = form.elements.namedItem("form").value;
          form.requestSubmit();
          return name;
        }
        """;

    private IBrowserContext? _context;
    private IPage? _page;
    private CutForm _form = CutForm.Reading;

    public string Name { get; } = name;

    public CutWire Wire { get; } = new(appPort);

    /// <summary>The label of all that was entered, in order.</summary>
    public List<string> Entered { get; } = [];

    /// <summary>How many of them were no readings of the floor.</summary>
    public int EnteredElsewhere { get; private set; }

    public int Posts => Wire.Posts;

    /// <summary>Opens the page of one form; a page cannot be left while the wire is cut.</summary>
    public async Task Open(CutForm form)
    {
        _form = form;
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
        for (var left = 600; ; left--) // an app that starts on a busy machine may take a minute
        {
            try
            {
                await _page.GotoAsync(form.Page);
                break;
            }
            catch (Exception e) when (e is PlaywrightException or TimeoutException && left > 0)
            {
                await Task.Delay(200);
            }
        }
    }

    /// <summary>Fills the form and presses the button; back when it stands ready for the next, kept or waiting.</summary>
    public async Task Enter()
    {
        var label = $"{Name}{Entered.Count + 1}";
        Entered.Add(label);
        EnteredElsewhere += _form == CutForm.Reading ? 0 : 1;
        var form = await _page!.EvaluateAsync<string>(
            Fill,
            new
            {
                action = _form.Action,
                fields = _form.Fields,
                note = _form.Note,
                label,
                count = Entered.Count,
                tall = Name == "a" ? 60 : 61,
            }
        );
        await _page.WaitForFunctionAsync(
            "([action, name]) => { const form = document.querySelector(`main form[data-waits][action='${action}']`); "
                + "return form && form.elements.namedItem('form').value !== name && !document.querySelector('form[data-keeping]'); }",
            new[] { _form.Action, form }
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
