using Microsoft.AspNetCore.Http;
using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>Tools are described and put away.</summary>
internal static class ToolChanges
{
    public static IResult Describe(CarRequest request)
    {
        var faults = new FieldFaults();
        var name = request.RequiredText("name", Say("tools.a-name"), faults, most: 40);
        if (!Enum.TryParse<ToolKind>(request.Field("kind"), out var kind) || !Enum.IsDefined(kind))
        {
            faults.Add("kind", Say("tools.choose-what-kind-of"));
        }

        var tool = new Tool(
            name,
            kind,
            ClassOf(request, kind, faults),
            Positive(request, "division", faults),
            Positive(request, "sigma", faults)
        );
        return faults.Any
            ? Show.Again<ToolsPage>(ToolsView.Of(request, faults))
            : request.Keep(request.Address("tools"), new Act.ToolDescribed(tool));
    }

    public static IResult Remove(CarRequest request) =>
        request.Car.File.Tools.Any(t => t.Id == request.Part("tool"))
            ? request.Keep(request.Address("tools"), new Act.ToolRemoved(request.Part("tool")))
            : Show.NotFound(Say("tools.there-is-no-such"));

    private static TapeClass? ClassOf(CarRequest request, ToolKind kind, FieldFaults faults)
    {
        if (request.Field("class").Length == 0)
        {
            return null;
        }

        if (!Enum.TryParse<TapeClass>(request.Field("class"), out var tapeClass) || !Enum.IsDefined(tapeClass))
        {
            faults.Add("class", Say("tools.choose-class-i-ii"));
            return null;
        }

        if (kind is not (ToolKind.Tape or ToolKind.Rule))
        {
            faults.Add("class", Say("tools.a-class-is-printed"));
        }

        return tapeClass;
    }

    private static Length? Positive(CarRequest request, string field, FieldFaults faults)
    {
        var length = request.OptionalLength(field, request.Car.File.Units, faults);
        if (length == Length.Zero)
        {
            faults.Add(field, Say("tools.found-0-this-must"));
        }

        return length;
    }
}
