namespace Plumbmark.Inspection.Car.Json;

/// <summary>Which lengths make sense in a field.</summary>
public enum LengthBound
{
    /// <summary>Any: a coordinate, an offset.</summary>
    Any,

    /// <summary>Zero or more.</summary>
    NotNegative,

    /// <summary>More than zero: a distance, a division.</summary>
    Positive,
}
