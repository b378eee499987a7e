using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Exchange;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Sheet;

/// <summary>The car as it may be given to a club.</summary>
internal static class ClubFiles
{
    public static IResult Send(CarRequest request)
    {
        var name = request.Query("name") is { Length: > 0 and <= 80 } chosen ? chosen : null;
        var given = ClubFile.Of(request.Car.File, name, keepsSerial: request.Query("serial") == "yes");
        return Show.File(CarFileWriter.Write(given), "application/json", "club-file.json");
    }
}
