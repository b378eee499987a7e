using Microsoft.AspNetCore.Http;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>Limits are chosen, or taken away by leaving all of them empty.</summary>
internal static class LimitChanges
{
    public static IResult Choose(CarRequest request)
    {
        var faults = new FieldFaults();
        var mirror = Positive(request, "mirror", faults);
        var height = Positive(request, "height", faults);
        var point = Positive(request, "point", faults);
        var note = request.OptionalText("note", faults, most: 300);
        if (!Enum.TryParse<LimitSource>(request.Field("source"), out var source) || !Enum.IsDefined(source))
        {
            faults.Add("source", Say("limits.choose-whose-limits-these"));
        }

        if (faults.Any)
        {
            return Show.Again<LimitsPage>(LimitsView.Of(request, faults));
        }

        var limits = (mirror ?? height ?? point) is null ? null : new Limits(mirror, height, point, source, note);
        return request.Keep(request.Address("floor"), new Act.LimitsChosen(limits));
    }

    private static Length? Positive(CarRequest request, string field, FieldFaults faults)
    {
        var length = request.OptionalLength(field, request.Car.File.Units, faults);
        if (length == Length.Zero)
        {
            faults.Add(field, Say("limits.found-0-a-limit"));
        }

        return length;
    }
}
