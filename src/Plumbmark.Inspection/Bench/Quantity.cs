namespace Plumbmark.Inspection.Bench;

/// <summary>What sort of number a dimension is.</summary>
public enum Quantity
{
    /// <summary>Metres inside, inches or millimetres at the edge.</summary>
    Length,

    /// <summary>Radians inside, degrees at the edge.</summary>
    Angle,

    /// <summary>Newtons per metre inside, pounds per inch or newtons per millimetre at the edge.</summary>
    Rate,
}
