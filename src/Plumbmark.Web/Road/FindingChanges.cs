using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Journal;
using Plumbmark.Inspection.Road;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Road;

/// <summary>Something found on a part is kept, or taken back. It is never changed.</summary>
internal static class FindingChanges
{
    public static IResult Keep(CarRequest request)
    {
        var faults = new FieldFaults();
        var part = FindingsView.PartOf(request);
        var word = $"{char.ToLowerInvariant(part.ToString()[0])}{part.ToString()[1..]}";
        var act = FormAct.Read(
            request,
            request.Car.File.Units,
            "part-found",
            "part",
            RoadFields.Finding(part),
            [("id", "new"), ("part", word)],
            faults
        );
        return act is Act.PartFound { Part: { } found }
            ? request.Keep(
                request.Address("road/findings"),
                car => [new Act.PartFound(found with { Id = NextName("p", (car.File.Road?.Parts ?? []).Select(p => p.Id)) })]
            )
            : Show.Again<FindingsPage>(FindingsView.Of(request, faults));
    }

    public static IResult AskBack(CarRequest request) =>
        StandingOf(request) is { } finding ? Show.Page<TakeBackPage>(Back(request, finding, new FieldFaults())) : NotThere();

    public static IResult TakeBack(CarRequest request)
    {
        if (StandingOf(request) is not { } finding)
        {
            return NotThere();
        }

        var faults = new FieldFaults();
        var reason = request.RequiredText("reason", Say("road.finding.a-reason"), faults);
        return faults.Any
            ? Show.Again<TakeBackPage>(Back(request, finding, faults))
            : request.Keep(request.Address("road/findings"), new Act.PartTakenBack(finding.Id, reason));
    }

    /// <summary>The next free name: a letter and one more than the largest number so far.</summary>
    public static string NextName(string letter, IEnumerable<string> taken)
    {
        var largest = taken
            .Where(id => id.StartsWith(letter, StringComparison.Ordinal))
            .Select(id => int.TryParse(id[letter.Length..], out var number) ? number : 0)
            .DefaultIfEmpty(0)
            .Max();
        return $"{letter}{largest + 1}";
    }

    private static TakeBackView Back(CarRequest request, PartDeviation finding, FieldFaults faults) =>
        new(
            request.Car,
            Say("road.finding.take-back-n", finding.Id),
            FindingsView.Words(finding),
            request.Address($"road/findings/{Uri.EscapeDataString(finding.Id)}/withdrawal"),
            request.Address("road/findings"),
            request.Field("reason"),
            faults
        );

    private static PartDeviation? StandingOf(CarRequest request) =>
        request.Car.File.Road?.Parts.FirstOrDefault(p => p.Id == request.Part("finding") && p.Withdrawn is null);

    private static IResult NotThere() => Show.NotFound(Say("road.finding.there-is-no-such"));
}
