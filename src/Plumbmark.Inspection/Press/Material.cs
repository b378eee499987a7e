namespace Plumbmark.Inspection.Press;

/// <summary>The metal of a part, as far as it is known.</summary>
public enum Material
{
    /// <summary>Cold-rolled low-carbon sheet, as in pressed arms and brackets.</summary>
    MildSheet,

    /// <summary>Low-carbon bar of the 070M20 kind (the old En 3).</summary>
    MildBar,

    /// <summary>Structural steel S235.</summary>
    S235,

    /// <summary>Structural steel S275.</summary>
    S275,

    /// <summary>Structural steel S355.</summary>
    S355,

    /// <summary>Medium-carbon steel of the 080M40 kind (the old En 8), normalised.</summary>
    MediumCarbon,

    /// <summary>Alloy steel, hardened and tempered.</summary>
    AlloySteel,

    /// <summary>Grey, malleable or nodular cast iron.</summary>
    CastIron,

    /// <summary>Aluminium or another light alloy.</summary>
    LightAlloy,

    /// <summary>Nobody knows.</summary>
    Unknown,
}
