using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Round;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Floor;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Sheet;

/// <summary>The readings of a printed form as typed in: all that are typed, or none with every fault told where it stands.</summary>
internal static class FormReadings
{
    public static IResult Take(CarRequest request)
    {
        if (FormNumber.Read(request.Field(FormInView.NumberField), request.Car.Sequence) is not { } number)
        {
            return Show.NotFound(Say("sheet.form-readings.there-is-no-form"));
        }

        var faults = new FieldFaults();
        var view = FormInView.Of(request, number, faults);
        var readings = view.Lines.Where(l => l.Kept is null).Select(l => Typed(l, request, faults)).OfType<Reading>().ToList();
        if (!faults.Any && readings.Count == 0)
        {
            faults.Add(FormInView.NumberField, Say("sheet.form-readings.nothing-is-typed-yet"));
        }

        return faults.Any
            ? Show.Again<FormInPage>(view)
            : request.Keep(
                $"{request.Address("sheet/form-in")}?{FormInView.NumberField}={number}",
                car => [.. readings.Zip(ReadingNames.From(car), (r, id) => new Act.ReadingTaken(r with { Id = id }))]
            );
    }

    private static Reading? Typed(FormLine line, CarRequest request, FieldFaults faults)
    {
        var field = line.Line.Kind switch
        {
            RoundKind.Height or RoundKind.Rise => FormInView.LevelField,
            RoundKind.Plan or RoundKind.Direct => FormInView.TapeField,
            _ => null,
        };
        var tool = field is null ? null : request.OptionalText(field, faults);
        return line.Typed(request, faults) is { } reading ? reading with { Tool = tool } : null;
    }
}
