namespace Plumbmark;

/// <summary>Which version of the program this is, as it is written on sheets.</summary>
internal static class ProgramVersion
{
    /// <summary>Such as 0.1.0.</summary>
    public static string Text { get; } = typeof(ProgramVersion).Assembly.GetName().Version is { } v ? $"{v.Major}.{v.Minor}.{v.Build}" : "";
}
