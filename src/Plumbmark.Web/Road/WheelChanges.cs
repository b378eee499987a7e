using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Journal;
using Plumbmark.Inspection.Road;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Road;

/// <summary>A reading at the wheels is taken, or taken back. It is never changed.</summary>
internal static class WheelChanges
{
    public static IResult Keep(CarRequest request)
    {
        var faults = new FieldFaults();
        var (word, _, _, fields) = RoadFields.WheelKinds[WheelsView.KindOf(request)];
        var act = FormAct.Read(request, request.Car.File.Units, "wheel-read", "reading", fields, [("id", "new"), ("kind", word)], faults);
        return act is Act.WheelRead { Reading: { } reading }
            ? request.Keep(
                request.Address($"road/wheels?kind={word}"),
                car =>
                    [new Act.WheelRead(reading with { Id = FindingChanges.NextName("w", (car.File.Road?.Wheels ?? []).Select(w => w.Id)) })]
            )
            : Show.Again<WheelsPage>(WheelsView.Of(request, faults));
    }

    public static IResult AskBack(CarRequest request) =>
        StandingOf(request) is { } reading ? Show.Page<TakeBackPage>(Back(request, reading, new FieldFaults())) : NotThere();

    public static IResult TakeBack(CarRequest request)
    {
        if (StandingOf(request) is not { } reading)
        {
            return NotThere();
        }

        var faults = new FieldFaults();
        var reason = request.RequiredText("reason", Say("road.wheel.a-reason"), faults);
        return faults.Any
            ? Show.Again<TakeBackPage>(Back(request, reading, faults))
            : request.Keep(request.Address("road/wheels"), new Act.WheelReadingWithdrawn(reading.Id, reason));
    }

    private static TakeBackView Back(CarRequest request, WheelReading reading, FieldFaults faults) =>
        new(
            request.Car,
            Say("road.wheel.take-back-reading", reading.Id),
            WheelReadingWords.For(reading),
            request.Address($"road/wheels/{Uri.EscapeDataString(reading.Id)}/withdrawal"),
            request.Address("road/wheels"),
            request.Field("reason"),
            faults
        );

    private static WheelReading? StandingOf(CarRequest request) =>
        request.Car.File.Road?.Wheels.FirstOrDefault(w => w.Id == request.Part("reading") && w.Withdrawn is null);

    private static IResult NotThere() => Show.NotFound(Say("road.wheel.there-is-no-such"));
}
