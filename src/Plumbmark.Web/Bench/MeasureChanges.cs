using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Bench;

/// <summary>Something is measured on a part, or a measure is taken back. It is never changed.</summary>
internal static class MeasureChanges
{
    public static IResult Take(CarRequest request)
    {
        if (PartChanges.Part(request) is not { } part)
        {
            return Show.NotFound(BenchRoom.NoSuchPart);
        }

        var faults = new FieldFaults();
        var kind = MeasureKind.Of(request.Field("measure"));
        if (new MeasureReader(request, faults).Read(kind, "m0") is not { } measure)
        {
            return Show.Again<PartPage>(PartView.Of(request, faults: faults)!);
        }

        return request.Keep(
            $"{PartChanges.Address(request, part.Id)}?measure={kind.Word}",
            car =>
            {
                var taken = (car.File.Parts.Part(part.Id)?.Measures ?? []).Select(m => m.Id).ToHashSet(StringComparer.Ordinal);
                var number = Enumerable.Range(1, taken.Count + 1).First(n => !taken.Contains($"m{n}"));
                return [new Act.BenchMeasured(part.Id, measure with { Id = $"m{number}" })];
            }
        );
    }

    public static IResult TakeBack(CarRequest request)
    {
        var faults = new FieldFaults();
        var reason = request.RequiredText("reason", Say("bench.measure.a-reason"), faults);
        if (MeasureWithdrawalView.Of(request, faults) is not { } view)
        {
            return Show.NotFound(Say("bench.measure.there-is-no-such"));
        }

        return faults.Any
            ? Show.Again<MeasureWithdrawalPage>(view)
            : request.Keep(
                PartChanges.Address(request, view.Part.Id),
                new Act.BenchMeasureWithdrawn(view.Part.Id, view.Measure.Id, reason)
            );
    }
}
