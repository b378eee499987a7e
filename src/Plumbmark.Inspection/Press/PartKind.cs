namespace Plumbmark.Inspection.Press;

/// <summary>What part lies in the press. Some are never straightened; see <see cref="Gate"/>.</summary>
public enum PartKind
{
    /// <summary>A wishbone or half of one.</summary>
    Wishbone,

    /// <summary>A bracket that carries neither wheel nor steering.</summary>
    Bracket,

    /// <summary>A frame horn.</summary>
    Horn,

    /// <summary>An outrigger.</summary>
    Outrigger,

    /// <summary>A crossmember that carries no suspension.</summary>
    Crossmember,

    /// <summary>A bumper iron.</summary>
    BumperIron,

    /// <summary>A stay or strut of the body.</summary>
    Stay,

    /// <summary>A crossmember that carries the suspension.</summary>
    SuspensionCrossmember,

    /// <summary>A steering lever.</summary>
    SteeringLever,

    /// <summary>A track rod, cross tube or other tie rod.</summary>
    TieRod,

    /// <summary>An upright.</summary>
    Upright,

    /// <summary>A stub axle.</summary>
    StubAxle,

    /// <summary>A ball joint or its pin.</summary>
    BallJoint,

    /// <summary>A fulcrum pin or king pin.</summary>
    FulcrumPin,

    /// <summary>A spring.</summary>
    Spring,
}
