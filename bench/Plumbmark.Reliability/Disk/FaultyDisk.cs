using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Plumbmark.Reliability.Disk;

/// <summary>
/// Stands between SQLite and the disk while it lives: counts every step that opens, reads, writes, shortens, syncs or deletes a file, and lets one go wrong.
/// </summary>
/// <remarks>One at a time in a process, because SQLite has one default file system. Nothing in the program knows of it.</remarks>
public sealed unsafe class FaultyDisk : IDisposable
{
    private const int Ok = 0;
    private const int ReadError = 10 | (1 << 8);
    private const int WriteError = 10 | (3 << 8);
    private const int SyncError = 10 | (4 << 8);
    private const int TruncateError = 10 | (6 << 8);
    private const int DeleteError = 10 | (10 << 8);
    private const int Full = 13;
    private const int CannotOpen = 14;
    private const int MayCreate = 4; // SQLITE_OPEN_CREATE

    // Rollback journal, super-journal, write-ahead log: with the first sync of one that it made, SQLite syncs the folder (os_unix.c, UNIXFILE_DIRSYNC).
    private const int AnyJournal = 0x800 | 0x4000 | 0x80000;

    private static FaultyDisk? s_current;
    private readonly SqliteFileSystem* _ours;
    private readonly SqliteFileSystem* _real;
    private readonly FileFunctions* _functions;
    private readonly Dictionary<long, string> _paths = [];
    private readonly HashSet<long> _syncsFolder = [];
    private readonly DiskImage _image = new();
    private readonly Random _random;
    private readonly long _at;
    private readonly DiskFault _fault;

    /// <summary>Puts itself before the disk.</summary>
    /// <param name="fault">What goes wrong.</param>
    /// <param name="at">At which step, from 1; 0 for never, only to count.</param>
    /// <param name="seed">Decides how far a failing write gets and what a power cut leaves.</param>
    public FaultyDisk(DiskFault fault, long at, int seed)
    {
        (_fault, _at, _random) = (fault, at, new Random(seed));
        SQLitePCL.Batteries_V2.Init();
        _real = SqliteFileSystem.Find(null);
        _functions = Functions();
        _ours = (SqliteFileSystem*)NativeMemory.AllocZeroed((nuint)sizeof(SqliteFileSystem));
        *_ours = *_real;
        _ours->FileSize = sizeof(OpenFile) + _real->FileSize;
        _ours->Name = (byte*)Marshal.StringToCoTaskMemUTF8("plumbmark-faulty");
        _ours->Open = &Open;
        _ours->Delete = &Delete;
        s_current = this;
        _ = SqliteFileSystem.Register(_ours, makeDefault: 1);
    }

    /// <summary>A folder in which nothing can be written or made; null for none.</summary>
    public string? ReadOnlyFolder { get; init; }

    /// <summary>Steps so far.</summary>
    public long Steps { get; private set; }

    /// <summary>Whether the fault has struck.</summary>
    public bool HasStruck => _at > 0 && Steps >= _at;

    /// <summary>Writes into a folder what is found of all files after the power cut or the kill.</summary>
    public void SaveWhatIsLeft(string folder) => _image.Save(folder, _fault == DiskFault.Killed, _random);

    /// <summary>Takes itself away again. Every file must have been closed.</summary>
    public void Dispose()
    {
        _ = SqliteFileSystem.Unregister(_ours);
        _ = SqliteFileSystem.Register(_real, makeDefault: 1);
        Marshal.FreeCoTaskMem((nint)_ours->Name);
        NativeMemory.Free(_ours);
        NativeMemory.Free(_functions);
        s_current = null;
    }

    private bool IsGone => HasStruck && _fault is (DiskFault.PowerCut or DiskFault.Killed or DiskFault.Unplugged);

    /// <summary>Counts a step and says whether it fails, and how.</summary>
    private int Step(int error, bool takesRoom)
    {
        Steps++;
        if (_at == 0 || Steps < _at)
        {
            return Ok;
        }

        return _fault switch
        {
            DiskFault.Fails => Steps == _at ? error : Ok,
            DiskFault.FullOnce => Steps == _at && takesRoom ? Full : Ok,
            DiskFault.FullFromHere => takesRoom ? Full : Ok,
            _ => error,
        };
    }

    // As SQLite's own file system does when the right to write is refused: opened for reading, and said so.
    private int OpenReadOnly(byte* name, OpenFile* file, int flags, int* outFlags, bool exists)
    {
        const int ReadWrite = 2;
        const int ReadOnly = 1;
        return exists ? _real->Open(_real, name, file, (flags & ~(ReadWrite | MayCreate)) | ReadOnly, outFlags) : CannotOpen;
    }

    private string Path(OpenFile* file) => _paths[file->Number];

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Open(SqliteFileSystem* system, byte* name, OpenFile* file, int flags, int* outFlags)
    {
        var disk = s_current!;
        file->Functions = null;
        if (name is null) // a file of SQLite's own for sorting, which nobody misses
        {
            return disk._real->Open(disk._real, name, file, flags, outFlags);
        }

        var path = Marshal.PtrToStringUTF8((nint)name)!;
        if (File.Exists(path))
        {
            disk._image.Opened(path);
        }

        if (disk.ReadOnlyFolder is { } folder && path.StartsWith(folder, StringComparison.Ordinal))
        {
            return disk.OpenReadOnly(name, file, flags, outFlags, File.Exists(path));
        }

        if (disk.Step(CannotOpen, takesRoom: (flags & MayCreate) != 0 && !File.Exists(path)) is not Ok and var error)
        {
            return error == Full ? CannotOpen : error;
        }

        disk._image.Opened(path);
        var result = disk._real->Open(disk._real, name, OpenFile.Real(file), flags, outFlags);
        if (OpenFile.Real(file)->Functions is not null)
        {
            file->Functions = disk._functions;
            file->Number = disk._paths.Count + 1;
            disk._paths[file->Number] = path;
            if ((flags & MayCreate) != 0 && (flags & AnyJournal) != 0)
            {
                disk._syncsFolder.Add(file->Number);
            }
        }

        return result;
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Delete(SqliteFileSystem* system, byte* name, int syncsFolder)
    {
        var disk = s_current!;
        if (disk.Step(DeleteError, takesRoom: false) is not Ok and var error)
        {
            return error;
        }

        var path = Marshal.PtrToStringUTF8((nint)name)!;
        disk._image.Deleted(path);
        if (syncsFolder != 0)
        {
            disk._image.SyncedFolder(System.IO.Path.GetDirectoryName(path)!);
        }

        return disk._real->Delete(disk._real, name, syncsFolder);
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Read(OpenFile* file, byte* bytes, int count, long at)
    {
        var disk = s_current!;
        return disk.Step(ReadError, takesRoom: false) is not Ok and var error
            ? error
            : Real(file)->Read(OpenFile.Real(file), bytes, count, at);
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Write(OpenFile* file, byte* bytes, int count, long at)
    {
        var disk = s_current!;
        var wasGone = disk.IsGone;
        var error = disk.Step(WriteError, takesRoom: true);
        // A write that fails may have been done in part.
        var done =
            error == Ok ? count
            : wasGone ? 0
            : disk._random.Next(count + 1);
        if (done > 0)
        {
            disk._image.Written(disk.Path(file), at, new ReadOnlySpan<byte>(bytes, done));
            var result = Real(file)->Write(OpenFile.Real(file), bytes, done, at);
            return error == Ok ? result : error;
        }

        return error;
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Truncate(OpenFile* file, long size)
    {
        var disk = s_current!;
        if (disk.Step(TruncateError, takesRoom: false) is not Ok and var error)
        {
            return error;
        }

        disk._image.Truncated(disk.Path(file), size);
        return Real(file)->Truncate(OpenFile.Real(file), size);
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Sync(OpenFile* file, int flags)
    {
        var disk = s_current!;
        if (disk.Step(SyncError, takesRoom: false) is not Ok and var error)
        {
            return error;
        }

        // The real disk need not be made to wait: what counts as synced is kept in the image.
        disk._image.SyncedAll(disk.Path(file));
        if (disk._syncsFolder.Remove(file->Number))
        {
            disk._image.SyncedFolder(System.IO.Path.GetDirectoryName(disk.Path(file))!);
        }

        return Ok;
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Close(OpenFile* file) => Real(file)->Close(OpenFile.Real(file));

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Size(OpenFile* file, long* size) => Real(file)->Size(OpenFile.Real(file), size);

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Lock(OpenFile* file, int level) => Real(file)->Lock(OpenFile.Real(file), level);

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Unlock(OpenFile* file, int level) => Real(file)->Unlock(OpenFile.Real(file), level);

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int CheckReservedLock(OpenFile* file, int* result) => Real(file)->CheckReservedLock(OpenFile.Real(file), result);

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Control(OpenFile* file, int what, void* argument) => Real(file)->Control(OpenFile.Real(file), what, argument);

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int SectorSize(OpenFile* file) => Real(file)->SectorSize(OpenFile.Real(file));

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Characteristics(OpenFile* file) => Real(file)->Characteristics(OpenFile.Real(file));

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int SharedMap(OpenFile* file, int region, int size, int extends, void** memory) =>
        Real(file)->SharedMap(OpenFile.Real(file), region, size, extends, memory);

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int SharedLock(OpenFile* file, int offset, int count, int flags) =>
        Real(file)->SharedLock(OpenFile.Real(file), offset, count, flags);

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static void SharedBarrier(OpenFile* file) => Real(file)->SharedBarrier(OpenFile.Real(file));

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int SharedUnmap(OpenFile* file, int deletes) => Real(file)->SharedUnmap(OpenFile.Real(file), deletes);

    private static FileFunctions* Real(OpenFile* file) => OpenFile.Real(file)->Functions;

    private static FileFunctions* Functions()
    {
        var functions = (FileFunctions*)NativeMemory.AllocZeroed((nuint)sizeof(FileFunctions));
        *functions = new FileFunctions
        {
            Version = 2,
            Close = &Close,
            Read = &Read,
            Write = &Write,
            Truncate = &Truncate,
            Sync = &Sync,
            Size = &Size,
            Lock = &Lock,
            Unlock = &Unlock,
            CheckReservedLock = &CheckReservedLock,
            Control = &Control,
            SectorSize = &SectorSize,
            Characteristics = &Characteristics,
            SharedMap = &SharedMap,
            SharedLock = &SharedLock,
            SharedBarrier = &SharedBarrier,
            SharedUnmap = &SharedUnmap,
        };
        return functions;
    }
}
