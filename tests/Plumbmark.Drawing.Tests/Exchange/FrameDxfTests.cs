using System.Diagnostics;
using System.Text;
using System.Text.Json;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Drawing.Exchange;

/// <summary>Opened with ezdxf (Debian package python3-ezdxf), a DXF reader that has nothing to do with this project.</summary>
public sealed class FrameDxfTests
{
    private const string Reader = """
        import sys, json, ezdxf
        from ezdxf import recover
        doc, auditor = recover.readfile(sys.argv[1])
        ents = []
        for e in doc.modelspace():
            t, d = e.dxftype(), e.dxf
            if t == "POINT": ents.append([t, d.layer, [round(v, 4) for v in d.location]])
            if t == "LINE": ents.append([t, d.layer, [round(v, 4) for v in d.start], [round(v, 4) for v in d.end]])
            if t == "TEXT": ents.append([t, d.layer, d.text, [round(v, 4) for v in d.insert]])
            if t == "CIRCLE": ents.append([t, d.layer, [round(v, 4) for v in d.center], d.radius])
        print(json.dumps({"version": doc.acad_release, "errors": len(auditor.errors), "fixes": len(auditor.fixes),
                          "layers": [l.dxf.name for l in doc.layers], "entities": ents}))
        """;

    private static JsonElement ReadBack(byte[] dxf)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "The independent reader is a Debian package.");
        var folder = Directory.CreateTempSubdirectory("plumbmark-dxf-");
        try
        {
            var file = Path.Combine(folder.FullName, "frame.dxf");
            var script = Path.Combine(folder.FullName, "reader.py");
            File.WriteAllBytes(file, dxf);
            File.WriteAllText(script, Reader);
            var start = new ProcessStartInfo("/usr/bin/python3", [script, file])
            {
                RedirectStandardOutput = true,
                RedirectStandardError = true,
                UseShellExecute = false,
            };
            start.Environment["HOME"] = folder.FullName;
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            Assert.True(process.ExitCode == 0, errors.Result);
            return JsonDocument.Parse(output).RootElement.Clone();
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static double Number(JsonElement list, int at) => list[at].GetDouble();

    [Fact]
    public void Dxf_OfAFrame_OpensElsewhereWithPointsWhereTheyAre()
    {
        var read = ReadBack(FrameDxf.Write(InventedFrame.Car, InventedFrame.Answer));
        Assert.Equal("R12", read.GetProperty("version").GetString());
        Assert.Equal((0, 0), (read.GetProperty("errors").GetInt32(), read.GetProperty("fixes").GetInt32()));
        var entities = read.GetProperty("entities").EnumerateArray().ToList();
        foreach (var point in InventedFrame.Answer.Points)
        {
            var name = entities.Single(e => e[0].GetString() == "TEXT" && e[2].GetString() == point.Id);
            Assert.Equal("NAMES", name[1].GetString());
            Assert.Contains(
                entities,
                e =>
                    e[0].GetString() == "POINT"
                    && e[1].GetString() == "FRAME"
                    && Math.Abs(Number(e[2], 0) - (point.XMetres!.Value * 1000)) < 0.001 // written to 0.0001 mm
                    && Math.Abs(Number(e[2], 1) - (point.YMetres!.Value * 1000)) < 0.001
                    && Math.Abs(Number(e[2], 2) - (point.ZMetres!.Value * 1000)) < 0.001
            );
        }

        Assert.Equal(28, entities.Count(e => e[1].GetString() == "READINGS"));
        Assert.Equal(
            InventedFrame.Car.Frame.Points.Count,
            entities.Count(e => e[0].GetString() == "POINT" && e[1].GetString() == "FLOOR_MARKS")
        );
    }

    [Fact]
    public void Dxf_WithoutHeights_PutsNothingOnTheLayerOfHeights()
    {
        var flat = InventedFrame.Answer with { Points = [.. InventedFrame.Answer.Points.Select(p => p with { ZMetres = null })] };
        var entities = ReadBack(FrameDxf.Write(InventedFrame.Car, flat)).GetProperty("entities").EnumerateArray().ToList();
        Assert.DoesNotContain(entities, e => e[1].GetString() == "FRAME");
        Assert.Contains(entities, e => e[1].GetString() == "FRAME_NO_HEIGHT");
    }

    [Fact]
    public void Dxf_NameInAnyScript_IsSevenBitAndComesBack()
    {
        var car = InventedFrame.Car with
        {
            Frame = new Frame([new FramePoint("Träger\n½.L", Sketch: InventedFrame.Car.Frame.Points[0].Sketch)]),
            Readings = [],
        };
        var dxf = FrameDxf.Write(car, InventedFrame.Nothing);
        Assert.All(dxf, b => Assert.InRange(b, 9, 126));
        var texts = ReadBack(dxf)
            .GetProperty("entities")
            .EnumerateArray()
            .Where(e => e[0].GetString() == "TEXT")
            .Select(e => e[2].GetString());
        Assert.Contains("Träger ½.L", texts);
    }

    [Fact]
    public void Dxf_SameInput_SameBytes()
    {
        var dxf = FrameDxf.Write(InventedFrame.Car, InventedFrame.Answer);
        Assert.Equal(dxf, FrameDxf.Write(InventedFrame.Car, InventedFrame.Answer));
        Assert.EndsWith("  0\r\nEOF\r\n", Encoding.ASCII.GetString(dxf), StringComparison.Ordinal);
        Assert.Contains("AC1009", Encoding.ASCII.GetString(dxf), StringComparison.Ordinal);
    }
}
