namespace Plumbmark.Inspection.Car;

/// <summary>Accuracy class of a tape after directive 2014/32/EU, annex X (MI-008), as printed on its first decimetre.</summary>
public enum TapeClass
{
    /// <summary>Class I, the sharpest.</summary>
    I,

    /// <summary>Class II, the usual one.</summary>
    II,

    /// <summary>Class III.</summary>
    III,
}
