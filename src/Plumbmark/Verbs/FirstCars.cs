using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Web.Floor;

namespace Plumbmark.Verbs;

/// <summary>What stands in a new shed: the demo car to look at, and an empty place for one's own.</summary>
internal static class FirstCars
{
    public static IEnumerable<CarFile> All() =>
        [DemoCar.File(), CarFile.Named("My car", LengthUnit.Inch) with { Tools = ToolsView.Usual(LengthUnit.Inch) }];
}
