using Plumbmark.Engine.Lengths;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Shed;

/// <summary>What a car's own page shows.</summary>
/// <param name="Car">The car.</param>
/// <param name="Name">Its name, or what was typed for it.</param>
/// <param name="Serial">Its serial number, or what was typed for it.</param>
/// <param name="Note">Its note, or what was typed for it.</param>
/// <param name="Units">in or mm.</param>
/// <param name="Faults">What was wrong in the form.</param>
public sealed record CarView(OpenCar Car, string Name, string? Serial, string? Note, string Units, FieldFaults Faults)
{
    /// <summary>The page for a request; with faults, the form shows what was typed.</summary>
    public static CarView Of(CarRequest request, FieldFaults? faults = null)
    {
        var car = request.Car.File;
        return faults is null
            ? new CarView(
                request.Car,
                car.Car.Name,
                car.Car.Serial,
                car.Car.Note,
                car.Units == LengthUnit.Inch ? "in" : "mm",
                new FieldFaults()
            )
            : new CarView(
                request.Car,
                request.Field("name"),
                request.Field("serial"),
                request.Field("note"),
                request.Field("units"),
                faults
            );
    }
}
