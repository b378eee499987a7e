using Microsoft.AspNetCore.Http;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Floor;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Shed;

/// <summary>Changes to a car as a whole: it comes, is named, goes to the bin and comes back.</summary>
internal static class CarChanges
{
    public const string NoSkeleton = "none";
    public const string PracticeLimits = "practice";

    public static IResult Create(PageRequest request)
    {
        var faults = new FieldFaults();
        var name = request.RequiredText("name", Say("shed.car.a-name"), faults);
        var units = Units(request, faults);
        var points = Skeleton(request, units, faults);
        if (faults.Any)
        {
            return Show.Again<ShedPage>(ShedView.Of(request, faults));
        }

        var car = request.Journals.Add(New(request, name, units, points), request.FormName());
        return Show.Redirect(points.Count == 0 ? $"/cars/{car.Id}/points" : $"/cars/{car.Id}/floor");
    }

    public static IResult Describe(CarRequest request)
    {
        var faults = new FieldFaults();
        var car = new CarIdentity(
            request.RequiredText("name", Say("shed.car.a-name"), faults),
            request.OptionalText("serial", faults),
            request.OptionalText("note", faults, most: 2000)
        );
        var units = Units(request, faults);
        return faults.Any
            ? Show.Again<CarPage>(CarView.Of(request, faults))
            : request.Keep($"/cars/{request.Car.Id}", new Act.CarDescribed(car, units));
    }

    public static IResult PutInBin(CarRequest request)
    {
        request.Journals.PutInBin(request.Car.Id);
        return Show.Redirect("/", Notice.Binned);
    }

    public static IResult TakeFromBin(PageRequest request) =>
        long.TryParse(request.Part("car"), out var car) && request.Journals.TakeFromBin(car)
            ? Show.Redirect("/", Notice.Restored)
            : Show.NotFound(Say("shed.car.there-is-no-such"));

    private static CarFile New(PageRequest request, string name, LengthUnit units, IReadOnlyList<FramePoint> points) =>
        CarFile.Named(name, units) with
        {
            Tools = ToolsView.Usual(units),
            Frame = new Frame(points, request.Field("limits") == PracticeLimits ? LimitsView.Practice(units) : null),
        };

    private static LengthUnit Units(PageRequest request, FieldFaults faults)
    {
        switch (request.Field("units"))
        {
            case "in":
                return LengthUnit.Inch;
            case "mm":
                return LengthUnit.Millimetre;
            default:
                faults.Add("units", Say("shed.car.choose-inches-or-millimetres"));
                return LengthUnit.Inch;
        }
    }

    private static IReadOnlyList<FramePoint> Skeleton(PageRequest request, LengthUnit units, FieldFaults faults)
    {
        var choice = request.Field("skeleton");
        if (choice is NoSkeleton)
        {
            return [];
        }

        if (int.TryParse(choice, out var pairs) && pairs is >= FrameSkeleton.FewestPairs and <= FrameSkeleton.MostPairs)
        {
            return FrameSkeleton.Ladder(pairs, units);
        }

        faults.Add("skeleton", Say("shed.car.choose-an-empty-frame", FrameSkeleton.FewestPairs, FrameSkeleton.MostPairs));
        return [];
    }
}
