using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>A reading is taken, or taken back. It is never changed.</summary>
internal static class ReadingChanges
{
    public static IResult Take(CarRequest request)
    {
        var faults = new FieldFaults();
        if (EntryForm.Read(request, "r0", faults) is not { } reading)
        {
            return Show.Again<FloorPage>(FloorView.Of(request, EntryForm.Sent(request, faults)));
        }

        // Kind and tool stay as they are for the next reading; the ends are picked anew.
        var next = EntryForm.Sent(request, faults) with
        {
            Point = "",
            From = "",
            To = "",
        };
        var address = next.Address(request.Car.Id) + (next.IsOnRound ? "#value" : "");
        return request.Keep(address, car => [new Act.ReadingTaken(reading with { Id = ReadingNames.Next(car) })]);
    }

    /// <summary>A reading in one line. What is not understood comes back as it was written, with a sentence.</summary>
    public static IResult TakeLine(CarRequest request) =>
        QuickLine
            .Read(request.Field("line"), request.Car.File, "r0")
            .Match(
                reading =>
                    request.Keep(
                        $"{request.Address("floor")}#line",
                        car => [new Act.ReadingTaken(reading with { Id = ReadingNames.Next(car) })]
                    ),
                sentence =>
                {
                    var faults = new FieldFaults();
                    faults.Add("line", sentence);
                    return Show.Again<FloorPage>(FloorView.Of(request, EntryForm.Sent(request, faults)));
                }
            );

    public static IResult TakeBack(CarRequest request)
    {
        var id = request.Part("reading");
        if (WithdrawalView.Of(request, new FieldFaults()) is not { } view)
        {
            return Show.NotFound(Say("readings.there-is-no-such"));
        }

        var faults = view.Faults;
        var reason = request.RequiredText("reason", Say("withdrawal.a-reason"), faults);
        return faults.Any ? Show.Again<WithdrawalPage>(view) : request.Keep(request.Address("floor"), new Act.ReadingWithdrawn(id, reason));
    }
}
