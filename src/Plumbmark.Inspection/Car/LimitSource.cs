namespace Plumbmark.Inspection.Car;

/// <summary>Whose limit it is. A limit of practice is never a factory limit.</summary>
public enum LimitSource
{
    /// <summary>Printed by the maker for this car.</summary>
    Factory,

    /// <summary>What the trade uses.</summary>
    Practice,

    /// <summary>The owner's own choice.</summary>
    Own,
}
