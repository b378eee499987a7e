using Plumbmark.Inspection.Floor.Levelling;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Floor;

/// <summary>What the levelling page shows: what the level says so far, and the form for what it shows now.</summary>
/// <param name="Car">The car.</param>
/// <param name="Answer">What to put under which stand; null while nothing is read.</param>
/// <param name="Rows">What stands in the form.</param>
/// <param name="Picture">The stands and the floor from above, as SVG; empty while nothing is read.</param>
/// <param name="Faults">What is wrong in the form.</param>
public sealed record LevelView(OpenCar Car, LevellingAnswer? Answer, LevelRows Rows, string Picture, FieldFaults Faults)
{
    /// <summary>The page for a request; with faults, as it was typed.</summary>
    public static LevelView Of(CarRequest request, FieldFaults? faults = null)
    {
        var car = request.Car.File;
        var answer = LevellingGuide.For(car);
        return new LevelView(
            request.Car,
            answer,
            faults is null ? LevelRows.Kept(car) : LevelRows.Sent(request),
            answer is null ? "" : LevelPicture.Svg(car, answer),
            faults ?? new FieldFaults()
        );
    }
}
