using System.Net;
using System.Net.Sockets;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Microsoft.AspNetCore.Builder;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Tests;

/// <summary>The real app on a free port with a journal of its own in a temporary folder, and a visitor without JavaScript.</summary>
public sealed class RunningApp : IAsyncDisposable
{
    // All of 127/8 is this machine's own (RFC 1122, 3.2.1.3); the app listens at this one as if it were the home network's.
    private static readonly IPAddress s_lan = IPAddress.Parse("127.0.0.2");
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

    /// <summary>Where its journal stands.</summary>
    public string Folder => _folder;

    public IServiceProvider Services => _app.Services;

    /// <summary>An address that plays the home network: requests that come in there are a stranger's.</summary>
    public string? LanAddress => _app.Urls.Skip(1).FirstOrDefault();

    public static Task<RunningApp> Start() => Start(place => place);

    /// <summary>With faults planted.</summary>
    public static Task<RunningApp> StartWith(Action<IServiceCollection> plant) => Start(place => place, plant);

    public static async Task<RunningApp> Start(Func<WebPlace, WebPlace> choose, Action<IServiceCollection>? plant = null)
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-web-").FullName;
        var journals = Journals.Open(Path.Combine(folder, "plumbmark.db"));
        var app = WebServer.Build(journals, choose(new WebPlace(Port: 0, OwnFolder: null)), plant ?? (_ => { }));
        await app.StartAsync();
        return new RunningApp(app, journals, folder);
    }

    /// <summary>The app open to the home network, played by another loopback address, on a port that is free.</summary>
    public static Task<RunningApp> StartOnLan(string? ownFolder = null) =>
        Start(place => place with { Port = FreePort(), Lan = [s_lan], OwnFolder = ownFolder });

    /// <summary>Somebody on the home network, with cookies of his own.</summary>
    public HttpClient Stranger() =>
        new(new SocketsHttpHandler { AllowAutoRedirect = true, UseCookies = true }) { BaseAddress = new Uri(LanAddress!) };

    private static int FreePort()
    {
        using var listener = new TcpListener(s_lan, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
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
