namespace Plumbmark.Engine.Lengths;

/// <summary>The two units a length is kept and shown in; feet, thou, centimetres and metres are read but kept as one of these.</summary>
public enum LengthUnit
{
    /// <summary>Millimetre, the meaning of <c>default</c>.</summary>
    Millimetre,

    /// <summary>Inch of exactly 25.4 mm (agreement of 1959).</summary>
    Inch,
}
