using System.CommandLine;
using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Builder;
using Plumbmark.Inspection.Language;
using Plumbmark.Store;
using Plumbmark.Web;
using Plumbmark.Web.Phones;
using Plumbmark.Web.Server;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark serve</c>, and what happens when no verb is given: the app on this machine.</summary>
internal static class ServeVerb
{
    private const int FirstPort = 4610;
    private const int PortsTried = 40;

    /// <summary>What may be chosen.</summary>
    /// <param name="Data">The journal file; null for the user's own.</param>
    /// <param name="Port">The port; null for the first free one.</param>
    /// <param name="IsLan">Whether phones on the home network may be let in.</param>
    /// <param name="LanAddress">The address on that network; null for this machine's own private ones.</param>
    internal sealed record Options(string? Data, int? Port, bool IsLan, string? LanAddress);

    public static Command Command(Output output)
    {
        var command = new Command("serve", Texts.Say("verb.serve.start-the-app-on-this"));
        AddTo(command, output);
        return command;
    }

    /// <summary>Gives a command the options and the action of this verb, so that the program without a verb is the same.</summary>
    public static void AddTo(Command command, Output output)
    {
        var data = DataOption.Create();
        var port = new Option<int?>("--port") { Description = Texts.Say("verb.serve.the-port-on-127-0"), HelpName = "N" };
        var lan = new Option<string?>("--lan")
        {
            Description = Texts.Say("verb.serve.let-phones-on-the-home"),
            HelpName = "ADDRESS",
            Arity = ArgumentArity.ZeroOrOne,
        };
        command.Options.Add(data);
        command.Options.Add(port);
        command.Options.Add(lan);
        command.SetAction(
            (parsed, stop) =>
                Run(
                    new Options(parsed.GetValue(data), parsed.GetValue(port), parsed.GetResult(lan) is not null, parsed.GetValue(lan)),
                    output,
                    stop
                )
        );
    }

    public static async Task<int> Run(Options options, Output output, CancellationToken stop)
    {
        using var journals = DataOption.Open(options.Data, output);
        journals.FillWhenNew(FirstCars.All);
        var lan = options.IsLan ? LanAddresses(options.LanAddress) : [];
        // Kestrel cannot give the same free port at two addresses, so it is chosen here.
        var port = options.Port is { } asked && (asked != 0 || lan.Count == 0) ? asked : FirstFreePort(lan, options.Port is null);
        var place = new WebPlace(port, OwnFolder.Make(Path.Combine(DataFolder.Path(), "keys"))) { Lan = lan };
        await using var app = WebServer.Build(journals, place);
        try
        {
            await app.StartAsync(stop);
        }
        catch (IOException e)
        {
            throw new InputRefusedException(Texts.Say("verb.serve.the-app-cannot-be-started", e.Message));
        }

        var address = app.Urls.First();
        output.Result(Texts.Say("verb.serve.plumbmark-is-open-at", address));
        if (lan.Count > 0)
        {
            TellPhones(app, lan, output);
        }

        output.Remark(lan.Count == 0 ? Texts.Say("verb.serve.only-this-machine-can-see") : Texts.Say("verb.serve.stop-it-with-ctrl-c"));
        using var copies = CopyDaily(journals, output);
        await app.WaitForShutdownAsync(stop);
        return ExitCode.True;
    }

    /// <summary>Where phones go, as text and for their cameras, with a code for the first one.</summary>
    private static void TellPhones(WebApplication app, IReadOnlyList<IPAddress> lan, Output output)
    {
        var addresses = app.Urls.Where(u => lan.Any(a => a.ToString() == new Uri(u).Host)).Select(u => $"{u}/").ToList();
        output.Result(Texts.Say("verb.serve.phones-in-the-home-network", string.Join(" or ", addresses)));
        output.Remark("");
        output.Remark(QrPicture.Text(addresses[0], !Console.IsErrorRedirected && Environment.GetEnvironmentVariable("NO_COLOR") is null));
        output.Remark(Texts.Say("verb.serve.code-for-the-first-phone", PhonesRoom.MakeCode(app.Services)));
        output.Remark(Texts.Say("verb.serve.for-more-phones-and-to"));
        output.Remark(Texts.Say("verb.serve.between-phone-and-laptop-everything"));
        output.Remark(Texts.Say("verb.serve.should-a-phone-not-find"));
    }

    /// <summary>Makes each day's copy of the journal: soon after the start, which it does not hold up, and then each hour when one is due.</summary>
    private static Timer CopyDaily(Journals journals, Output output) =>
        new(
            _ =>
            {
                try
                {
                    DailyCopies.Keep(journals, TimeProvider.System);
                }
                catch (StoreUnusableException e)
                {
                    output.Remark(e.Message);
                }
            },
            null,
            TimeSpan.FromSeconds(5),
            TimeSpan.FromHours(1)
        );

    /// <exception cref="InputRefusedException">There is no such address on a home network.</exception>
    private static IReadOnlyList<IPAddress> LanAddresses(string? asked)
    {
        if (asked is null)
        {
            var own = HomeNetwork.Addresses();
            return own.Count > 0 ? own : throw new InputRefusedException(Texts.Say("verb.serve.no-home-network-was-found"));
        }

        return IPAddress.TryParse(asked, out var address) && HomeNetwork.IsPrivate(address) && !address.Equals(IPAddress.Loopback)
            ? [address]
            : throw new InputRefusedException(Texts.Say("verb.serve.found-after-lan-an-address", asked));
    }

    /// <summary>The first port that is free at every address; any free one when <paramref name="isUsual"/> is false or the usual ones are taken.</summary>
    private static int FirstFreePort(IReadOnlyList<IPAddress> lan, bool isUsual)
    {
        var usual = isUsual ? Enumerable.Range(FirstPort, PortsTried) : [];
        var port = usual.Where(p => IsFree(IPAddress.Loopback, p) && lan.All(a => IsFree(a, p))).Select(p => (int?)p).FirstOrDefault() ?? 0;
        return port != 0 || lan.Count == 0 ? port : AnyFree();
    }

    private static int AnyFree()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static bool IsFree(IPAddress address, int port)
    {
        try
        {
            using var listener = new TcpListener(address, port);
            listener.Start();
            return true;
        }
        catch (SocketException)
        {
            return false;
        }
    }
}
