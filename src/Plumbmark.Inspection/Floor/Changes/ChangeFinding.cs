namespace Plumbmark.Inspection.Floor.Changes;

/// <summary>Whether something differs between two moments. The meaning of <c>default</c> is that nothing can be said.</summary>
public enum ChangeFinding
{
    /// <summary>So small a difference would come from measuring twice as well.</summary>
    CouldBeNoise,

    /// <summary>It changed, allowing for how many values were compared.</summary>
    Real,
}
