namespace Plumbmark.Drawing.Sheets;

/// <summary>The paper a sheet is printed on, upright. <c>default</c> is A4.</summary>
public enum Paper
{
    /// <summary>ISO 216 A4, 210 mm by 297 mm.</summary>
    A4,

    /// <summary>US Letter, 8 1/2 in by 11 in.</summary>
    Letter,
}
