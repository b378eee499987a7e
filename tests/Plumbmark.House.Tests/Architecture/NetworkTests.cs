using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace Plumbmark.House.Tests.Architecture;

/// <summary>Nothing is sent anywhere, and the mathematics touches nothing outside itself: read from the compiled references.</summary>
public class NetworkTests
{
    // What opens a connection to somewhere else. Listening (the app itself) is none of these.
    private static readonly string[] s_outgoing =
    [
        "System.Net.Http.HttpClient",
        "System.Net.Http.HttpMessageInvoker",
        "System.Net.Http.SocketsHttpHandler",
        "System.Net.WebRequest",
        "System.Net.HttpWebRequest",
        "System.Net.WebClient",
        "System.Net.FtpWebRequest",
        "System.Net.Sockets.TcpClient",
        "System.Net.WebSockets.ClientWebSocket",
        "System.Net.Mail.SmtpClient",
        "System.Net.NetworkInformation.Ping",
    ];

    private static readonly string[] s_world =
    [
        "System.Console",
        "System.DateTime",
        "System.DateTimeOffset",
        "System.TimeProvider",
        "System.Random",
        "System.Diagnostics.Stopwatch",
        "System.Diagnostics.Process",
        "System.Threading.Thread",
        "System.Threading.Tasks.Task",
        "System.Threading.Tasks.Parallel",
    ];

    public static TheoryData<string> Projects => [.. House.Projects];

    [Theory]
    [MemberData(nameof(Projects))]
    public void NoProject_OpensAConnectionOutward(string project) => Assert.Empty(TypesUsedBy(project).Intersect(s_outgoing));

    [Fact]
    public void Engine_UsesNoClockFileConsoleChanceOrThread()
    {
        var used = TypesUsedBy("Plumbmark.Engine");
        Assert.Empty(used.Intersect(s_world));
        // The compiler's own: an iterator asks which thread it is on.
        var environment = MembersUsedBy("Plumbmark.Engine").Where(m => m.StartsWith("System.Environment.", StringComparison.Ordinal));
        Assert.Empty(environment.Except(["System.Environment.get_CurrentManagedThreadId"]));
        Assert.DoesNotContain(used, t => t.StartsWith("System.IO.", StringComparison.Ordinal));
        Assert.DoesNotContain(used, t => t.StartsWith("System.Net.", StringComparison.Ordinal));
    }

    // A file's bytes come in and go out; opening, naming and dating it is the business of Store and the verbs.
    [Fact]
    public void Inspection_OpensNoFileAndReadsNoClock()
    {
        var used = TypesUsedBy("Plumbmark.Inspection");
        Assert.Empty(used.Intersect(["System.IO.File", "System.IO.FileStream", "System.IO.Directory", "System.Console", "System.Random"]));
        Assert.DoesNotContain(used, t => t.StartsWith("System.Net.", StringComparison.Ordinal));
        Assert.DoesNotContain("System.DateTimeOffset.get_UtcNow", MembersUsedBy("Plumbmark.Inspection"));
        Assert.DoesNotContain("System.DateTime.get_Now", MembersUsedBy("Plumbmark.Inspection"));
        Assert.DoesNotContain("System.Guid.NewGuid", MembersUsedBy("Plumbmark.Inspection"));
    }

    [Fact]
    public void Page_LoadsNothingFromElsewhere()
    {
        var wrong =
            from file in House.Sources("*.razor", "src").Concat(House.Sources("*.css", "src")).Concat(House.Sources("*.js", "src"))
            // A bundled library's text names addresses of papers and licences; what it may fetch is bounded by the pages' connect-src 'self'.
            where Path.GetFileName(Path.GetDirectoryName(file)) != "three"
            from line in File.ReadLines(file)
            where line.Contains("https://", StringComparison.Ordinal) || line.Contains("src=\"http", StringComparison.Ordinal)
            select $"{House.Relative(file)}: {line.Trim()}";
        House.None(wrong);
    }

    private static HashSet<string> TypesUsedBy(string project) =>
        Read(
            project,
            (reader, used) =>
            {
                foreach (var handle in reader.TypeReferences)
                {
                    used.Add(NameOf(reader, handle));
                }
            }
        );

    private static HashSet<string> MembersUsedBy(string project) =>
        Read(
            project,
            (reader, used) =>
            {
                foreach (var handle in reader.MemberReferences)
                {
                    var member = reader.GetMemberReference(handle);
                    if (member.Parent.Kind == HandleKind.TypeReference)
                    {
                        used.Add($"{NameOf(reader, (TypeReferenceHandle)member.Parent)}.{reader.GetString(member.Name)}");
                    }
                }
            }
        );

    private static HashSet<string> Read(string project, Action<MetadataReader, HashSet<string>> take)
    {
        using var file = new PEReader(File.OpenRead(House.AssemblyOf(project).Location));
        var used = new HashSet<string>(StringComparer.Ordinal);
        take(file.GetMetadataReader(), used);
        Assert.NotEmpty(used);
        return used;
    }

    private static string NameOf(MetadataReader reader, TypeReferenceHandle handle)
    {
        var type = reader.GetTypeReference(handle);
        return $"{reader.GetString(type.Namespace)}.{reader.GetString(type.Name)}";
    }
}
