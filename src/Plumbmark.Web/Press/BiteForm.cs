using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Press;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Press;

/// <summary>The form for a bite, as it stands or as it was sent.</summary>
/// <param name="Travel">Travel.</param>
/// <param name="Left">Still out by.</param>
/// <param name="Set">Stayed.</param>
/// <param name="Load">Gauge.</param>
/// <param name="Dwell">Seconds held.</param>
/// <param name="Note">Note.</param>
/// <param name="Signs">Words of the signs ticked.</param>
/// <param name="Faults">What was wrong.</param>
public sealed record BiteForm(
    string Travel,
    string Left,
    string Set,
    string Load,
    string Dwell,
    string Note,
    IReadOnlyList<string> Signs,
    FieldFaults Faults
)
{
    /// <summary>An empty form.</summary>
    public static BiteForm Empty { get; } = new("", "", "", "", "", "", [], new FieldFaults());

    /// <summary>The form as it was sent.</summary>
    public static BiteForm Sent(CarRequest request, FieldFaults faults) =>
        new(
            request.Field("travel"),
            request.Field("left"),
            request.Field("set"),
            request.Field("load"),
            request.Field("dwell"),
            request.Field("note"),
            SignWords(request),
            faults
        );

    /// <summary>The bite in a form; null with the faults recorded.</summary>
    public static BiteRecord? Read(CarRequest request, FieldFaults faults)
    {
        var units = request.Car.File.Units;
        var travel = request.RequiredLength("travel", units, faults);
        var left = request.OptionalLength("left", units, faults, LengthSign.MayBeNegative);
        var set = request.OptionalLength("set", units, faults, LengthSign.MayBeNegative);
        if (travel == Length.Zero)
        {
            faults.Add("travel", Say("press.bite.found-0-a-bite"));
        }

        if (!faults.Any && left is null == set is null)
        {
            faults.Add("left", Say("press.bite.write-how-far-it"));
        }

        var (load, dwell) = (Number(request, "load", faults), Number(request, "dwell", faults));
        var note = request.OptionalText("note", faults);
        return faults.Any || travel is not { } t
            ? null
            : new BiteRecord("b0", t)
            {
                Left = left,
                Set = set,
                Load = load,
                DwellSeconds = dwell,
                Note = note,
                Signs = [.. PressChoices.Signs.Where(s => SignWords(request).Contains(s.Word)).Select(s => s.Sign)],
            };
    }

    private static string[] SignWords(CarRequest request) =>
        request.Http.Request.HasFormContentType ? [.. request.Http.Request.Form["signs"].OfType<string>()] : [];

    private static double? Number(CarRequest request, string field, FieldFaults faults)
    {
        var text = request.Field(field);
        if (text.Length == 0)
        {
            return null;
        }

        if (
            double.TryParse(
                text,
                System.Globalization.NumberStyles.AllowDecimalPoint,
                System.Globalization.CultureInfo.InvariantCulture,
                out var number
            )
        )
        {
            return number;
        }

        faults.Add(field, Say("press.bite.found-a-plain-number", text));
        return null;
    }
}
