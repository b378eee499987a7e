using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>What must be said with every answer about a part: crack tests, and where measuring ends.</summary>
internal static class Reminders
{
    public static IReadOnlyList<string> For(Part part, Disposition disposition)
    {
        var all = new List<string>();
        if (disposition == Disposition.Straighten)
        {
            all.Add(Texts.Say("bench.reminders.test-for-cracks-before-and"));
            all.Add(Texts.Say("bench.reminders.never-heat-a-suspension-or"));
        }
        else if (disposition != Disposition.Replace && NeedsCrackTest(part))
        {
            all.Add(
                part.ClearBy is null or CrackMethod.Eye
                    ? Texts.Say("bench.reminders.have-it-tested-for-cracks")
                    : Texts.Say("bench.reminders.a-crack-test-that-found")
            );
        }

        if (part.Kind is PartKind.SteeringLever or PartKind.Upright or PartKind.StubAxle or PartKind.TrackRod or PartKind.BallJoint)
        {
            all.Add(Texts.Say("bench.reminders.steering-levers-track-rods-ball"));
        }

        if (part.Kind == PartKind.CoilSpring)
        {
            all.Add(Texts.Say("bench.reminders.a-compressed-spring-can-kill"));
        }

        all.Add(Texts.Say("bench.reminders.no-dimension-shows-a-crack"));
        all.Add(Texts.Say("bench.reminders.an-aid-for-comparing-parts"));
        return all;
    }

    private static bool NeedsCrackTest(Part part) =>
        part.Make is PartMake.Forged or PartMake.Cast
        || part.Kind
            is PartKind.SteeringLever
                or PartKind.Upright
                or PartKind.StubAxle
                or PartKind.Trunnion
                or PartKind.TrackRod
                or PartKind.BallJoint
        || part.Conditions.Any(c => c is PartCondition.PressedBefore or PartCondition.Welded or PartCondition.Heated);
}
