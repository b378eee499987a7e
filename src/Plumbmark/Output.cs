using System.Text;

namespace Plumbmark;

/// <summary>Where a verb writes: results to standard output, remarks to standard error. UTF-8, with line ends as on Unix.</summary>
internal sealed class Output(Stream results, TextWriter remarks)
{
    private static readonly UTF8Encoding s_utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Writes a result as text.</summary>
    public void Result(string text) => Result(s_utf8.GetBytes(text));

    /// <summary>Writes a result as it is.</summary>
    public void Result(ReadOnlySpan<byte> bytes)
    {
        results.Write(bytes);
        results.Flush();
    }

    /// <summary>Writes one line that is not part of the result.</summary>
    public void Remark(string line) => remarks.WriteLine(line);
}
