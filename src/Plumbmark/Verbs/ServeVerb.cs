using System.CommandLine;
using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Builder;
using Plumbmark.Store;
using Plumbmark.Web;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark serve</c>, and what happens when no verb is given: the app on this machine.</summary>
internal static class ServeVerb
{
    private const int FirstPort = 4610;
    private const int PortsTried = 40;

    /// <summary>What may be chosen.</summary>
    /// <param name="Data">The journal file; null for the user's own.</param>
    /// <param name="Port">The port; null for the first free one.</param>
    internal sealed record Options(string? Data, int? Port);

    public static Command Command(Output output)
    {
        var command = new Command("serve", "Start the app on this machine and print its address. This is what happens without a verb.");
        AddTo(command, output);
        return command;
    }

    /// <summary>Gives a command the options and the action of this verb, so that the program without a verb is the same.</summary>
    public static void AddTo(Command command, Output output)
    {
        var data = DataOption.Create();
        var port = new Option<int?>("--port") { Description = "The port on 127.0.0.1. Without it, the first free one.", HelpName = "N" };
        command.Options.Add(data);
        command.Options.Add(port);
        command.SetAction((parsed, stop) => Run(new Options(parsed.GetValue(data), parsed.GetValue(port)), output, stop));
    }

    public static async Task<int> Run(Options options, Output output, CancellationToken stop)
    {
        using var journals = DataOption.Open(options.Data, output);
        journals.FillWhenNew(FirstCars.All);
        await using var app = WebServer.Build(journals, options.Port ?? FirstFreePort(), KeyFolder());
        try
        {
            await app.StartAsync(stop);
        }
        catch (IOException e)
        {
            throw new InputRefusedException($"The app cannot be started there: {e.Message}");
        }

        var address = app.Urls.First();
        output.Result($"Plumbmark is open at {address}/\n");
        output.Remark("Only this machine can see it. Stop it with Ctrl+C; everything entered is kept.");
        using var copies = CopyDaily(journals, output);
        await app.WaitForShutdownAsync(stop);
        return ExitCode.True;
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

    private static int FirstFreePort() => Enumerable.Range(FirstPort, PortsTried).Where(IsFree).Select(p => (int?)p).FirstOrDefault() ?? 0;

    private static bool IsFree(int port)
    {
        try
        {
            using var listener = new TcpListener(IPAddress.Loopback, port);
            listener.Start();
            return true;
        }
        catch (SocketException)
        {
            return false;
        }
    }

    /// <summary>Where the keys of forms are kept: not beside the journal, which its owner may give away. None when it cannot be written.</summary>
    private static string? KeyFolder()
    {
        var folder = Path.Combine(DataFolder.Path(), "keys");
        try
        {
            Directory.CreateDirectory(folder);
            var probe = Path.Combine(folder, $".probe-{Environment.ProcessId}");
            File.WriteAllText(probe, "");
            File.Delete(probe);
            return folder;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
