using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Road;
using Plumbmark.Store;
using Plumbmark.Web.Floor;
using Plumbmark.Web.Phones;
using Plumbmark.Web.Road;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web;

/// <summary>Builds the local app: every room on one address of this machine, and on no other.</summary>
public static class WebServer
{
    /// <summary>Larger than the largest car file and the largest photo, so that one that is too large is refused in words.</summary>
    private const long LargestRequestBytes = 24 * 1024 * 1024;

    private const int MostConnections = 1000;

    // The rest is for this machine: no crowd in the network can shut its owner out.
    private const int MostFromTheNetwork = 800;

    // The weakest garage Wi-Fi is a hundred times quicker; a body that trickles to hold a connection open is not.
    private const int SlowestBytesPerSecond = 500;

    /// <summary>An app that is not started yet.</summary>
    /// <param name="journals">The cars; not disposed with the app.</param>
    /// <param name="port">The port on 127.0.0.1; 0 for any free one.</param>
    /// <param name="keyFolder">Where the keys are kept that make a form opened before a restart good after it; null keeps none.</param>
    public static WebApplication Build(Journals journals, int port, string? keyFolder) => Build(journals, new WebPlace(port, keyFolder));

    /// <summary>An app that is not started yet, open to the home network too when its place says so.</summary>
    /// <param name="journals">The cars; not disposed with the app.</param>
    /// <param name="place">Where it is open.</param>
    public static WebApplication Build(Journals journals, WebPlace place) => Build(journals, place, _ => { });

    /// <summary>The same with faults planted by a test.</summary>
    internal static WebApplication Build(Journals journals, WebPlace place, Action<IServiceCollection> plant)
    {
        // The empty builder reads no settings files and no environment: nothing can make it listen elsewhere.
        var builder = WebApplication.CreateEmptyBuilder(
            new WebApplicationOptions
            {
                ApplicationName = "Plumbmark",
                ContentRootPath = AppContext.BaseDirectory,
                EnvironmentName = Environments.Production,
            }
        );
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel => Limit(kestrel, place));
        AddServices(builder.Services, journals, place);
        plant(builder.Services);
        var app = builder.Build();
        app.UseMiddleware<RequestGuard>();
        app.UseRouting();
        BuiltInFiles.Map(app);
        var routes = new RoomRoutes(app);
        foreach (var room in Rooms.All)
        {
            room.Map(routes);
        }

        app.MapFallback(http => Show.NotFound(Say("page.web.there-is-no-such")).ExecuteAsync(http));
        return app;
    }

    private static void Limit(KestrelServerOptions kestrel, WebPlace place)
    {
        kestrel.AddServerHeader = false;
        kestrel.Limits.MaxRequestBodySize = LargestRequestBytes;
        kestrel.Limits.MaxConcurrentConnections = MostConnections;
        kestrel.Limits.RequestHeadersTimeout = place.HeadPatience;
        kestrel.Limits.MinRequestBodyDataRate = new MinDataRate(SlowestBytesPerSecond, place.BodyPatience);
        kestrel.Listen(IPAddress.Loopback, place.Port);
        var crowd = new Crowd(MostFromTheNetwork);
        foreach (var address in place.Lan)
        {
            kestrel.Listen(address, place.Port, listen => listen.Use(crowd.Admit));
        }
    }

    private static void Log(ILoggingBuilder logging) =>
        logging
            .SetMinimumLevel(LogLevel.Warning)
            .AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace)
            // They warn of what is meant: keys of forms are kept unencrypted in the owner's own folder, and no page may be cached.
            .AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error)
            .AddFilter("Microsoft.AspNetCore.Antiforgery", LogLevel.Error)
            // A port that is taken is told in one sentence by the verb.
            .AddFilter("Microsoft.Extensions.Hosting", LogLevel.None);

    private static void AddServices(IServiceCollection services, Journals journals, WebPlace place)
    {
        services.AddSingleton(journals);
        services.AddSingleton(place);
        services.AddSingleton(new PhoneList(place.OwnFolder, TimeProvider.System));
        services.AddSingleton(new PairingCode(TimeProvider.System));
        services.AddSingleton<LanDoor>();
        services.AddSingleton<Func<CarFile, FloorAnswer>>(car => FloorInspection.Of(car));
        services.AddSingleton<FloorAnswers>();
        services.AddSingleton<Func<CarFile, RoadAnswer>>(car => RoadInspection.Of(car));
        services.AddSingleton<RoadAnswers>();
        services.AddRoutingCore();
        services.AddRazorComponents();
        services.AddLogging(Log);
        services.Configure<FormOptions>(form =>
        {
            form.ValueLengthLimit = 64 * 1024;
            form.ValueCountLimit = 1024;
            form.MultipartBodyLengthLimit = LargestRequestBytes;
        });
        services.AddAntiforgery(forgery =>
        {
            forgery.FormFieldName = FormFields.ForgeryToken;
            forgery.Cookie.Name = "plumbmark-form";
            forgery.Cookie.SameSite = SameSiteMode.Strict;
            forgery.Cookie.HttpOnly = true;
            forgery.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
            forgery.SuppressXFrameOptionsHeader = true; // frame-ancestors says it
        });
        var protection = services.AddDataProtection().SetApplicationName("Plumbmark");
        if (place.OwnFolder is not { } folder)
        {
            protection.UseEphemeralDataProtectionProvider();
        }
        else
        {
            protection.PersistKeysToFileSystem(new DirectoryInfo(folder));
        }
    }
}
