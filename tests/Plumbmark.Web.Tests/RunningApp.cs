using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Microsoft.AspNetCore.Builder;
using Microsoft.Data.Sqlite;
using Plumbmark.Store;

namespace Plumbmark.Web.Tests;

/// <summary>The real app on a free port with a journal of its own in a temporary folder, and a visitor without JavaScript.</summary>
public sealed class RunningApp : IAsyncDisposable
{
    private readonly WebApplication _app;
    private readonly string _folder;

    private RunningApp(WebApplication app, Journals journals, string folder)
    {
        _app = app;
        _folder = folder;
        Journals = journals;
        Client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = true, UseCookies = true })
        {
            BaseAddress = new Uri(app.Urls.First()),
        };
    }

    public Journals Journals { get; }

    public HttpClient Client { get; }

    public static async Task<RunningApp> Start()
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-web-").FullName;
        var journals = Journals.Open(Path.Combine(folder, "plumbmark.db"));
        var app = WebServer.Build(journals, port: 0, keyFolder: null);
        await app.StartAsync();
        return new RunningApp(app, journals, folder);
    }

    /// <summary>A page as a browser without script sees it.</summary>
    public async Task<VisitedPage> Get(string address) => await VisitedPage.Of(await Client.GetAsync(address));

    /// <summary>Fills in the form that posts to an address and sends it, hidden fields and all.</summary>
    public async Task<VisitedPage> Submit(VisitedPage page, string action, params (string Name, string Value)[] typed) =>
        await VisitedPage.Of(await Client.PostAsync(action, new FormUrlEncodedContent(page.Filled(action, typed))));

    /// <summary>Does to the journal file what no page does.</summary>
    public void RunSql(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={Path.Combine(_folder, "plumbmark.db")};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await _app.DisposeAsync();
        Journals.Dispose();
        Directory.Delete(_folder, recursive: true);
    }
}

/// <summary>What a visitor was shown.</summary>
public sealed record VisitedPage(HttpResponseMessage Response, IHtmlDocument Document)
{
    public int Status => (int)Response.StatusCode;

    public string Path => Response.RequestMessage!.RequestUri!.AbsolutePath;

    /// <summary>The text of the page's own content, with runs of blanks made one.</summary>
    public string Text =>
        string.Join(' ', (Document.QuerySelector("main")?.TextContent ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    public static async Task<VisitedPage> Of(HttpResponseMessage response) =>
        new(response, await new HtmlParser().ParseDocumentAsync(await response.Content.ReadAsStringAsync()));

    public IHtmlFormElement Form(string action) =>
        Document.Forms.FirstOrDefault(f => f.GetAttribute("action") == action)
        ?? throw new InvalidOperationException(
            $"No form to {action} on {Path}; there are: {string.Join(", ", Document.Forms.Select(f => f.GetAttribute("action")))}."
        );

    /// <summary>What the form would send: its own values, with those typed instead where given. A field that the form has not is refused.</summary>
    public List<KeyValuePair<string, string>> Filled(string action, params (string Name, string Value)[] typed)
    {
        var form = Form(action);
        var names = form.Elements.Select(e => e.GetAttribute("name")).ToHashSet();
        foreach (var (name, _) in typed.Where(t => !names.Contains(t.Name)))
        {
            throw new InvalidOperationException($"The form to {action} has no field \"{name}\"; it has: {string.Join(", ", names)}.");
        }

        var fields = form
            .Elements.Where(e => e.GetAttribute("name") is { Length: > 0 } n && typed.All(t => t.Name != n))
            .SelectMany(Values);
        return [.. fields, .. typed.Select(t => KeyValuePair.Create(t.Name, t.Value))];
    }

    private static IEnumerable<KeyValuePair<string, string>> Values(IHtmlElement element)
    {
        var name = element.GetAttribute("name")!;
        switch (element)
        {
            case IHtmlInputElement { Type: "checkbox" or "radio", IsChecked: false }
            or IHtmlInputElement { Type: "file" }
            or IHtmlButtonElement:
                yield break;
            case IHtmlInputElement input:
                yield return KeyValuePair.Create(name, input.Value);
                break;
            case IHtmlSelectElement select:
                yield return KeyValuePair.Create(name, select.Value ?? "");
                break;
            case IHtmlTextAreaElement area:
                yield return KeyValuePair.Create(name, area.Value);
                break;
        }
    }
}
