namespace Plumbmark.Inspection.Bench;

/// <summary>What must be said with every answer about a part: crack tests, and where measuring ends.</summary>
internal static class Reminders
{
    public static IReadOnlyList<string> For(Part part, Disposition disposition)
    {
        var all = new List<string>();
        if (disposition == Disposition.Straighten)
        {
            all.Add(
                "Test for cracks before and after: bare metal, dye penetrant or, better, magnetic particles. If anything shows, scrap the part."
            );
            all.Add(
                "Never heat a suspension or steering part. Many makers forbid straightening: their word and a competent person's go first."
            );
        }
        else if (disposition != Disposition.Replace && NeedsCrackTest(part))
        {
            all.Add(
                part.ClearBy is null or CrackMethod.Eye
                    ? "Have it tested for cracks before it goes back: magnetic particles find more than dye."
                    : "A crack test that found nothing does not prove that there is no crack."
            );
        }

        if (part.Kind is PartKind.SteeringLever or PartKind.Upright or PartKind.StubAxle or PartKind.TrackRod or PartKind.BallJoint)
        {
            all.Add("Steering levers, track rods, ball joints, uprights and stub axles: if bent, replace; never straighten.");
        }

        if (part.Kind == PartKind.CoilSpring)
        {
            all.Add("A compressed spring can kill: use a proper restraint, and keep hands and face out of its way.");
        }

        all.Add("No dimension shows a crack, thinning by rust or a bad weld: look, and have it looked at.");
        all.Add(
            "An aid for comparing parts. It does not say that a part is safe or fit for the road; the maker's manual and a competent inspection go first."
        );
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
