namespace Plumbmark.Inspection.Press;

/// <summary>Why the press refuses a part. Each has its sentences in <see cref="GateWords"/>.</summary>
public enum RefusalReason
{
    /// <summary>A steering lever.</summary>
    SteeringLever,

    /// <summary>A track rod, cross tube or other tie rod.</summary>
    TieRod,

    /// <summary>An upright.</summary>
    Upright,

    /// <summary>A stub axle.</summary>
    StubAxle,

    /// <summary>A ball joint.</summary>
    BallJoint,

    /// <summary>A fulcrum pin or king pin.</summary>
    FulcrumPin,

    /// <summary>A spring.</summary>
    Spring,

    /// <summary>A crossmember that carries the suspension.</summary>
    SuspensionCrossmember,

    /// <summary>A casting, or cast iron.</summary>
    Casting,

    /// <summary>Aluminium or another light alloy.</summary>
    LightAlloy,

    /// <summary>Alloy steel, hardened.</summary>
    AlloySteel,

    /// <summary>A forged arm.</summary>
    ForgedArm,

    /// <summary>A metal that nobody knows.</summary>
    UnknownMaterial,

    /// <summary>Cracked.</summary>
    Cracked,

    /// <summary>Kinked, creased or dented at the bend.</summary>
    Kinked,

    /// <summary>Torn.</summary>
    Torn,

    /// <summary>Rusted thin or pitted.</summary>
    Corroded,

    /// <summary>Welded since it left its maker.</summary>
    Welded,

    /// <summary>Heated.</summary>
    Heated,

    /// <summary>Bent back once already.</summary>
    BentTwice,

    /// <summary>Twisted as well.</summary>
    Twisted,

    /// <summary>Bent in two planes.</summary>
    TwoPlanes,

    /// <summary>An arm bent further than practice allows.</summary>
    BentTooFar,

    /// <summary>The strain of straightening is over the limit.</summary>
    StrainOverLimit,

    /// <summary>A wall buckles before the part yields.</summary>
    BucklesFirst,
}
