using System.Globalization;
using System.Text;

namespace Plumbmark.Drawing.Exchange;

/// <summary>DXF release 12 in the making: pairs of a group code and a value, each on a line.</summary>
internal sealed class DxfText
{
    private readonly StringBuilder _dxf = new();

    public void Comment(string text) => Pair(999, Ascii(text));

    public void Header()
    {
        Section("HEADER");
        Pair(9, "$ACADVER");
        Pair(1, "AC1009");
        Pair(0, "ENDSEC");
    }

    public void Layers(IReadOnlyList<(string Name, int Colour)> layers)
    {
        Section("TABLES");
        Table("LTYPE", 1);
        Pair(0, "LTYPE");
        Pair(2, "CONTINUOUS");
        Pair(70, "0");
        Pair(3, "Solid line");
        Pair(72, "65");
        Pair(73, "0");
        Pair(40, "0.0");
        Pair(0, "ENDTAB");
        Table("LAYER", layers.Count);
        foreach (var (name, colour) in layers)
        {
            Pair(0, "LAYER");
            Pair(2, name);
            Pair(70, "0");
            Pair(62, $"{colour}");
            Pair(6, "CONTINUOUS");
        }

        Pair(0, "ENDTAB");
        Pair(0, "ENDSEC");
    }

    public void BeginEntities() => Section("ENTITIES");

    public string End()
    {
        Pair(0, "ENDSEC");
        Pair(0, "EOF");
        return _dxf.ToString();
    }

    public void Point(string layer, (double X, double Y, double Z) at)
    {
        Entity("POINT", layer);
        Place(0, at.X, at.Y, at.Z);
    }

    public void Line(string layer, (double X, double Y, double? Z) from, (double X, double Y, double? Z) to)
    {
        Entity("LINE", layer);
        Place(0, from.X, from.Y, from.Z);
        Place(1, to.X, to.Y, to.Z);
    }

    public void Circle(string layer, (double X, double Y) centre, double radius)
    {
        Entity("CIRCLE", layer);
        Place(0, centre.X, centre.Y, null);
        Pair(40, Number(radius));
    }

    public void Text(string layer, (double X, double Y) at, double height, string text)
    {
        Entity("TEXT", layer);
        Place(0, at.X, at.Y, null);
        Pair(40, Number(height));
        Pair(1, Ascii(text));
    }

    private void Section(string name)
    {
        Pair(0, "SECTION");
        Pair(2, name);
    }

    private void Table(string name, int count)
    {
        Pair(0, "TABLE");
        Pair(2, name);
        Pair(70, $"{count}");
    }

    private void Entity(string name, string layer)
    {
        Pair(0, name);
        Pair(8, layer);
    }

    private void Place(int which, double x, double y, double? z)
    {
        Pair(10 + which, Number(x));
        Pair(20 + which, Number(y));
        if (z is { } height)
        {
            Pair(30 + which, Number(height));
        }
    }

    private void Pair(int code, string value) =>
        _dxf.Append(code.ToString(CultureInfo.InvariantCulture).PadLeft(3)).Append("\r\n").Append(value).Append("\r\n");

    private static string Number(double value)
    {
        var rounded = Math.Round(value, 4);
        return (rounded == 0 ? 0 : rounded).ToString("0.0###", CultureInfo.InvariantCulture);
    }

    /// <summary>Seven-bit text on one line; other characters as the escapes \U+XXXX that drawing programs read back, controls as spaces.</summary>
    private static string Ascii(string text)
    {
        var ascii = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            ascii.Append(
                char.IsControl(c) ? " "
                : c > '~' ? $"\\U+{(int)c:X4}"
                : c.ToString()
            );
        }

        return ascii.ToString();
    }
}
