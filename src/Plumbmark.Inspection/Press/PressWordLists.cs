using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Press;

/// <summary>The words that the car file and the forms use for what may be chosen.</summary>
public static class PressWordLists
{
    /// <summary>Kinds of part.</summary>
    public static WordList<PartKind> Kinds { get; } =
        new(
            ("wishbone", PartKind.Wishbone),
            ("bracket", PartKind.Bracket),
            ("horn", PartKind.Horn),
            ("outrigger", PartKind.Outrigger),
            ("crossmember", PartKind.Crossmember),
            ("bumper-iron", PartKind.BumperIron),
            ("stay", PartKind.Stay),
            ("suspension-crossmember", PartKind.SuspensionCrossmember),
            ("steering-lever", PartKind.SteeringLever),
            ("tie-rod", PartKind.TieRod),
            ("upright", PartKind.Upright),
            ("stub-axle", PartKind.StubAxle),
            ("ball-joint", PartKind.BallJoint),
            ("fulcrum-pin", PartKind.FulcrumPin),
            ("spring", PartKind.Spring)
        );

    /// <summary>Ways of making.</summary>
    public static WordList<PartMake> Makes { get; } =
        new(
            ("pressed", PartMake.Pressed),
            ("fabricated", PartMake.Fabricated),
            ("bar", PartMake.Bar),
            ("tube", PartMake.Tube),
            ("forged", PartMake.Forged),
            ("cast", PartMake.Cast)
        );

    /// <summary>Metals.</summary>
    public static WordList<Material> Materials { get; } =
        new(
            ("mild-sheet", Material.MildSheet),
            ("mild-bar", Material.MildBar),
            ("S235", Material.S235),
            ("S275", Material.S275),
            ("S355", Material.S355),
            ("medium-carbon", Material.MediumCarbon),
            ("alloy-steel", Material.AlloySteel),
            ("cast-iron", Material.CastIron),
            ("light-alloy", Material.LightAlloy),
            ("unknown", Material.Unknown)
        );

    /// <summary>Shapes of section.</summary>
    public static WordList<SectionShape> Shapes { get; } =
        new(
            ("rectangle", SectionShape.Rectangle),
            ("round", SectionShape.Round),
            ("tube", SectionShape.Tube),
            ("box", SectionShape.Box),
            ("channel", SectionShape.Channel),
            ("channel-web-at-ram", SectionShape.ChannelWebAtRam),
            ("channel-legs-at-ram", SectionShape.ChannelLegsAtRam),
            ("I", SectionShape.I),
            ("hat", SectionShape.Hat)
        );

    /// <summary>No and yes.</summary>
    public static WordList<Answer> Answers { get; } = new(("no", Answer.No), ("yes", Answer.Yes));

    /// <summary>Planes of a bend.</summary>
    public static WordList<BendPlane> Planes { get; } = new(("ram", BendPlane.Ram), ("side", BendPlane.Side));

    /// <summary>What gaps are measured from.</summary>
    public static WordList<MeasuredFrom> Edges { get; } =
        new(("hollow", MeasuredFrom.Hollow), ("crown", MeasuredFrom.Crown), ("table", MeasuredFrom.Table));

    /// <summary>Where the travel is read.</summary>
    public static WordList<TravelPlace> TravelPlaces { get; } = new(("part", TravelPlace.Part), ("ram", TravelPlace.Ram));

    /// <summary>What a bite may show.</summary>
    public static WordList<BiteSign> Signs { get; } =
        new(
            ("tick", BiteSign.Tick),
            ("flaking", BiteSign.Flaking),
            ("load-fell", BiteSign.LoadFell),
            ("wrong-plane", BiteSign.WrongPlane),
            ("buckled", BiteSign.Buckled)
        );

    /// <summary>Ways of looking for a crack.</summary>
    public static WordList<CrackMethod> Methods { get; } =
        new(("dye", CrackMethod.Dye), ("magnetic", CrackMethod.Magnetic), ("eye", CrackMethod.Eye));
}
