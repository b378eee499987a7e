namespace Plumbmark.Inspection.Book;

/// <summary>How one serial number stands to another. Two that share no series are not guessed at.</summary>
public enum SerialOrder
{
    /// <summary>The first was made before the second.</summary>
    Before,

    /// <summary>Both are the same number.</summary>
    Same,

    /// <summary>The first was made after the second.</summary>
    After,

    /// <summary>The letters differ, or only letters behind the same number do: nothing says which came first.</summary>
    CannotBeCompared,
}
