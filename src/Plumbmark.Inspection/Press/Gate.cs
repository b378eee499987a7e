using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Press;

/// <summary>Decides whether the press plans for a part at all. It never says that a part is sound, and it never offers heat.</summary>
public static class Gate
{
    private static readonly Dictionary<PartKind, RefusalReason> s_never = new()
    {
        [PartKind.SteeringLever] = RefusalReason.SteeringLever,
        [PartKind.TieRod] = RefusalReason.TieRod,
        [PartKind.Upright] = RefusalReason.Upright,
        [PartKind.StubAxle] = RefusalReason.StubAxle,
        [PartKind.BallJoint] = RefusalReason.BallJoint,
        [PartKind.FulcrumPin] = RefusalReason.FulcrumPin,
        [PartKind.Spring] = RefusalReason.Spring,
        [PartKind.SuspensionCrossmember] = RefusalReason.SuspensionCrossmember,
    };

    private static readonly (Func<PartHistory, Answer?> Ask, RefusalReason Reason, string Topic, string Question)[] s_history =
    [
        (h => h.Cracked, RefusalReason.Cracked, "cracked", Texts.Say("press.gate.is-there-a-crack-anywhere")),
        (h => h.Kinked, RefusalReason.Kinked, "kinked", Texts.Say("press.gate.is-it-creased-kinked-or")),
        (h => h.Torn, RefusalReason.Torn, "torn", Texts.Say("press.gate.is-an-edge-or-a")),
        (h => h.Corroded, RefusalReason.Corroded, "corroded", Texts.Say("press.gate.is-it-rusted-thin-pitted")),
        (h => h.Welded, RefusalReason.Welded, "welded", Texts.Say("press.gate.has-it-been-welded-since")),
        (h => h.Heated, RefusalReason.Heated, "heated", Texts.Say("press.gate.has-it-been-heated-blue")),
        (h => h.PressedBefore, RefusalReason.BentTwice, "pressedBefore", Texts.Say("press.gate.has-it-been-bent-back")),
    ];

    /// <summary>What the part itself says: its kind, make, metal, history and crack tests. Measurements are judged by <see cref="PressPlan"/>.</summary>
    public static GateOutcome Examine(PressJob job)
    {
        var reasons = Reasons(job).Distinct().ToList();
        if (reasons.Count > 0)
        {
            return new GateOutcome.Refused([.. reasons.Select(GateWords.For)]);
        }

        var questions = Questions(job).ToList();
        return questions.Count > 0 ? new GateOutcome.Asking(questions) : new GateOutcome.Open();
    }

    private static IEnumerable<RefusalReason> Reasons(PressJob job)
    {
        var part = job.Part;
        if (part.Kind is { } kind && s_never.TryGetValue(kind, out var never))
        {
            yield return never;
        }

        if (part.Make == PartMake.Cast || part.Material == Material.CastIron)
        {
            yield return RefusalReason.Casting;
        }

        if (part is { Make: PartMake.Forged, Kind: PartKind.Wishbone })
        {
            yield return RefusalReason.ForgedArm;
        }

        switch (part.Material)
        {
            case Material.LightAlloy:
                yield return RefusalReason.LightAlloy;
                break;
            case Material.AlloySteel:
                yield return RefusalReason.AlloySteel;
                break;
            case Material.Unknown:
                yield return RefusalReason.UnknownMaterial;
                break;
        }

        foreach (var (ask, reason, _, _) in s_history)
        {
            if (ask(part.History) == Answer.Yes)
            {
                yield return reason;
            }
        }

        if (job.CrackTests.Any(t => t.Found))
        {
            yield return RefusalReason.Cracked;
        }
    }

    private static IEnumerable<GateQuestion> Questions(PressJob job)
    {
        var part = job.Part;
        if (part.Kind is null)
        {
            yield return new("kind", Texts.Say("press.gate.what-part-is-it"));
        }

        if (part.Make is null)
        {
            yield return new("make", Texts.Say("press.gate.how-was-it-made-pressed"));
        }

        if (part.Material is null)
        {
            yield return new("material", Texts.Say("press.gate.what-metal-is-it-a"));
        }

        foreach (var (ask, _, topic, question) in s_history)
        {
            if (ask(part.History) is null)
            {
                yield return new(topic, question);
            }
        }

        if (!job.CrackTests.Any(t => t.AfterBite is null && IsCrackTest(t, part)))
        {
            yield return new("crackTest", GateWords.TestFirst(part));
        }
    }

    /// <summary>Whether a test counts as the crack test that the press asks for: dye or magnetic, and magnetic for a forging.</summary>
    internal static bool IsCrackTest(CrackTest test, PressPart part) =>
        test.Method == CrackMethod.Magnetic || (test.Method == CrackMethod.Dye && part.Make != PartMake.Forged);
}
