using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Press;

/// <summary>Every sentence with which the press refuses or warns, in one place.</summary>
public static class GateWords
{
    private static string Replace => Texts.Say("press.gate.replace-it");
    private static string Competent => Texts.Say("press.gate.show-it-to-a-competent");

    /// <summary>What stands beside every press job, always.</summary>
    public static IReadOnlyList<string> Cautions { get; } =
    [
        Texts.Say("press.gate.many-makers-forbid-straightening-the"),
        Texts.Say("press.gate.no-heat-ever-no-torch"),
        Texts.Say("press.gate.test-bare-metal-for-cracks"),
        Texts.Say("press.gate.fit-the-guard-clamp-the"),
        Texts.Say("press.gate.soft-saddles-no-brittle-blocks"),
        Texts.Say("press.gate.what-is-shown-compares-readings"),
    ];

    /// <summary>The sentences of a reason.</summary>
    public static Refusal For(RefusalReason reason) =>
        reason switch
        {
            RefusalReason.SteeringLever => Never(
                reason,
                Texts.Say("press.gate.this-is-a-steering-lever"),
                Texts.Say("press.gate.it-steers-the-car-and")
            ),
            RefusalReason.TieRod => Never(
                reason,
                Texts.Say("press.gate.this-is-a-track-rod"),
                Texts.Say("press.gate.bending-it-back-damages-it")
            ),
            RefusalReason.Upright => Never(
                reason,
                Texts.Say("press.gate.this-is-an-upright"),
                Texts.Say("press.gate.it-carries-the-wheel-and")
            ),
            RefusalReason.StubAxle => Never(
                reason,
                Texts.Say("press.gate.this-is-a-stub-axle"),
                Texts.Say("press.gate.it-carries-the-wheel-and-breaks-by-fatigue-where")
            ),
            RefusalReason.BallJoint => Never(
                reason,
                Texts.Say("press.gate.this-is-a-ball-joint"),
                Texts.Say("press.gate.its-pin-is-hardened-and")
            ),
            RefusalReason.FulcrumPin => Never(
                reason,
                Texts.Say("press.gate.this-is-a-fulcrum-or"),
                Texts.Say("press.gate.it-is-hardened-and-ground")
            ),
            RefusalReason.Spring => Never(
                reason,
                Texts.Say("press.gate.this-is-a-spring"),
                Texts.Say("press.gate.it-is-hardened-and-holds")
            ),
            RefusalReason.SuspensionCrossmember => new(
                reason,
                Texts.Say("press.gate.this-crossmember-carries-the-suspension"),
                Texts.Say("press.gate.period-workshop-manuals-ask-for"),
                Texts.Say("press.gate.renew-it-or-take-it")
            ),
            RefusalReason.Casting => new(
                reason,
                Texts.Say("press.gate.this-is-a-casting"),
                Texts.Say("press.gate.cast-metal-bends-little-and"),
                Replace
            ),
            RefusalReason.LightAlloy => new(
                reason,
                Texts.Say("press.gate.this-is-aluminium-or-another"),
                Texts.Say("press.gate.it-cracks-when-it-is"),
                Replace
            ),
            RefusalReason.AlloySteel => new(
                reason,
                Texts.Say("press.gate.this-is-hardened-alloy-steel"),
                Texts.Say("press.gate.it-springs-back-far-hides"),
                Competent
            ),
            RefusalReason.ForgedArm => new(
                reason,
                Texts.Say("press.gate.this-is-a-forged-arm"),
                Texts.Say("press.gate.a-forging-springs-back-strongly"),
                Competent
            ),
            RefusalReason.UnknownMaterial => new(
                reason,
                Texts.Say("press.gate.nobody-knows-what-metal-this"),
                Texts.Say("press.gate.without-knowing-it-no-load"),
                Texts.Say("press.gate.find-out-first-magnet-casting")
            ),
            RefusalReason.Cracked => new(
                reason,
                Texts.Say("press.gate.there-is-a-crack"),
                Texts.Say("press.gate.bending-opens-it-and-nothing"),
                Texts.Say("press.gate.scrap-it-and-mark-it")
            ),
            RefusalReason.Kinked => new(
                reason,
                Texts.Say("press.gate.it-is-kinked-or-creased"),
                Texts.Say("press.gate.the-metal-of-a-kink"),
                Replace
            ),
            RefusalReason.Torn => new(reason, Texts.Say("press.gate.it-is-torn"), Texts.Say("press.gate.a-tear-runs-on-under"), Replace),
            RefusalReason.Corroded => new(
                reason,
                Texts.Say("press.gate.it-is-rusted-thin-or"),
                Texts.Say("press.gate.what-is-left-is-weaker"),
                Replace
            ),
            RefusalReason.Welded => new(
                reason,
                Texts.Say("press.gate.it-has-been-welded-since"),
                Texts.Say("press.gate.the-metal-beside-a-weld"),
                Competent
            ),
            RefusalReason.Heated => new(
                reason,
                Texts.Say("press.gate.it-has-been-heated"),
                Texts.Say("press.gate.heat-has-changed-the-metal"),
                Replace
            ),
            RefusalReason.BentTwice => new(
                reason,
                Texts.Say("press.gate.it-has-been-bent-back"),
                Texts.Say("press.gate.each-time-uses-up-what"),
                Replace
            ),
            RefusalReason.Twisted => new(
                reason,
                Texts.Say("press.gate.it-is-twisted-as-well"),
                Texts.Say("press.gate.a-press-pushes-in-one"),
                Competent
            ),
            RefusalReason.TwoPlanes => new(
                reason,
                Texts.Say("press.gate.it-is-bent-in-two"),
                Texts.Say("press.gate.each-plane-would-be-a"),
                Replace
            ),
            RefusalReason.BentTooFar => new(
                reason,
                Texts.Say("press.gate.the-arm-is-bent-by"),
                Texts.Say("press.gate.that-far-practice-stops-from"),
                Texts.Say("press.gate.replace-it-or-ask-an")
            ),
            RefusalReason.StrainOverLimit => new(
                reason,
                Texts.Say("press.gate.bending-it-back-strains-the"),
                Texts.Say("press.gate.the-accident-has-used-up"),
                Replace
            ),
            RefusalReason.BucklesFirst => new(
                reason,
                Texts.Say("press.gate.a-wall-of-this-section"),
                Texts.Say("press.gate.the-press-would-crush-it"),
                Texts.Say("press.gate.fill-or-pack-the-section")
            ),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>The question for the crack test before the first bite.</summary>
    public static string TestFirst(PressPart part) =>
        part.Make == PartMake.Forged ? Texts.Say("press.gate.test-it-for-cracks-with") : Texts.Say("press.gate.test-it-for-cracks-on");

    private static Refusal Never(RefusalReason reason, string what, string why) => new(reason, what, why, Replace);
}
