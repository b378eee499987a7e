namespace Plumbmark.Inspection.Press;

/// <summary>Every sentence with which the press refuses or warns, in one place.</summary>
public static class GateWords
{
    private const string Replace = "Replace it.";
    private const string Competent = "Show it to a competent person, or replace it.";

    /// <summary>What stands beside every press job, always.</summary>
    public static IReadOnlyList<string> Cautions { get; } =
    [
        "Many makers forbid straightening. The maker's word, a competent person and the rules where you live come before anything shown here.",
        "No heat, ever: no torch, no oven, no warming, before, during or after.",
        "Test bare metal for cracks before the first bite and after the last. Nothing found is not proof that nothing is there.",
        "Fit the guard, clamp the blocks, wear a face shield, keep fingers away and stand aside: an uneven block is what gets thrown.",
        "Soft saddles, no brittle blocks, no loose stacked spacers; never load an eye, a thread or a seat. Let the load off slowly.",
        "What is shown compares readings. It never says that a part is sound, safe or fit for the road.",
    ];

    /// <summary>The sentences of a reason.</summary>
    public static Refusal For(RefusalReason reason) =>
        reason switch
        {
            RefusalReason.SteeringLever => Never(
                reason,
                "This is a steering lever.",
                "It steers the car and may break without warning once it has been bent."
            ),
            RefusalReason.TieRod => Never(
                reason,
                "This is a track rod or another tie rod.",
                "Bending it back damages it further; maintenance manuals forbid it and ask for a new one."
            ),
            RefusalReason.Upright => Never(
                reason,
                "This is an upright.",
                "It carries the wheel, and its threads and bores start cracks that nobody sees."
            ),
            RefusalReason.StubAxle => Never(
                reason,
                "This is a stub axle.",
                "It carries the wheel and breaks by fatigue where it was bent."
            ),
            RefusalReason.BallJoint => Never(reason, "This is a ball joint.", "Its pin is hardened, and there is no second one behind it."),
            RefusalReason.FulcrumPin => Never(
                reason,
                "This is a fulcrum or king pin.",
                "It is hardened and ground, and its thread starts cracks."
            ),
            RefusalReason.Spring => Never(reason, "This is a spring.", "It is hardened and holds energy; pressing it can throw it."),
            RefusalReason.SuspensionCrossmember => new(
                reason,
                "This crossmember carries the suspension.",
                "Period workshop manuals ask for a new one when it is distorted: its pick-ups cannot be brought back in a press.",
                "Renew it, or take it to a shop with a fixture for this frame."
            ),
            RefusalReason.Casting => new(
                reason,
                "This is a casting.",
                "Cast metal bends little and then breaks, often inside first.",
                Replace
            ),
            RefusalReason.LightAlloy => new(
                reason,
                "This is aluminium or another light alloy.",
                "It cracks when it is bent cold.",
                Replace
            ),
            RefusalReason.AlloySteel => new(
                reason,
                "This is hardened alloy steel.",
                "It springs back far, hides cracks, and loses its strength where it is bent.",
                Competent
            ),
            RefusalReason.ForgedArm => new(
                reason,
                "This is a forged arm.",
                "A forging springs back strongly and can hide a crack that dye does not show.",
                Competent
            ),
            RefusalReason.UnknownMaterial => new(
                reason,
                "Nobody knows what metal this is.",
                "Without knowing it no load, no spring-back and no limit can be given.",
                "Find out first (magnet, casting line, spark, a test house), or replace it."
            ),
            RefusalReason.Cracked => new(
                reason,
                "There is a crack.",
                "Bending opens it, and nothing closes it again.",
                "Scrap it, and mark it so that nobody uses it."
            ),
            RefusalReason.Kinked => new(
                reason,
                "It is kinked or creased.",
                "The metal of a kink is spent; bending back cracks it.",
                Replace
            ),
            RefusalReason.Torn => new(reason, "It is torn.", "A tear runs on under load.", Replace),
            RefusalReason.Corroded => new(
                reason,
                "It is rusted thin or pitted.",
                "What is left is weaker than it looks, and pits start cracks.",
                Replace
            ),
            RefusalReason.Welded => new(
                reason,
                "It has been welded since it left its maker.",
                "The metal beside a weld is not what it was, and the weld may hide an earlier break.",
                Competent
            ),
            RefusalReason.Heated => new(reason, "It has been heated.", "Heat has changed the metal in a way that cannot be seen.", Replace),
            RefusalReason.BentTwice => new(
                reason,
                "It has been bent back before.",
                "Each time uses up what the metal can take; repeated bending ends in a crack.",
                Replace
            ),
            RefusalReason.Twisted => new(
                reason,
                "It is twisted as well as bent.",
                "A press pushes in one plane and does not take out a twist.",
                Competent
            ),
            RefusalReason.TwoPlanes => new(
                reason,
                "It is bent in two planes.",
                "Each plane would be a bend of its own; army frame repair bulletins ask for a new part then.",
                Replace
            ),
            RefusalReason.BentTooFar => new(
                reason,
                "The arm is bent by more than 5 degrees or 1/2 in.",
                "That far practice stops (from memory, no printed source).",
                "Replace it, or ask an engineer."
            ),
            RefusalReason.StrainOverLimit => new(
                reason,
                "Bending it back strains the outermost metal more than the limit chosen.",
                "The accident has used up about as much before; beyond the limit the metal may crack, at once or later.",
                Replace
            ),
            RefusalReason.BucklesFirst => new(
                reason,
                "A wall of this section buckles before the part yields.",
                "The press would crush it instead of straightening it.",
                "Fill or pack the section closely and let a competent person judge it, or replace it."
            ),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>The question for the crack test before the first bite.</summary>
    public static string TestFirst(PressPart part) =>
        part.Make == PartMake.Forged
            ? "Test it for cracks with magnetic particles on bare metal: on a forging dye is not enough."
            : "Test it for cracks on bare metal, with dye or magnetic particles. Magnetic particles find more in steel.";

    private static Refusal Never(RefusalReason reason, string what, string why) => new(reason, what, why, Replace);
}
