using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Journeys;

/// <summary>A car with the ladder frame that the shed offers, and nothing measured yet.</summary>
internal static class LadderCar
{
    public static CarFile File() =>
        CarFile.Named("Barn find", LengthUnit.Inch) with
        {
            Frame = new Frame(FrameSkeleton.Ladder(5, LengthUnit.Inch), Limits: null),
        };
}
