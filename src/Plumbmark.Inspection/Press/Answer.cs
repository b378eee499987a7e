namespace Plumbmark.Inspection.Press;

/// <summary>An answer to a question about a part. A question that is not answered has none: missing is never no.</summary>
public enum Answer
{
    /// <summary>No.</summary>
    No,

    /// <summary>Yes.</summary>
    Yes,
}
