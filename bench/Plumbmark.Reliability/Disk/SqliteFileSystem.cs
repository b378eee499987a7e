using System.Runtime.InteropServices;

namespace Plumbmark.Reliability.Disk;

/// <summary>SQLite's table of file system functions, as "The OS Backend (VFS)", sqlite.org/vfs.html, and sqlite3.h lay it out.</summary>
[StructLayout(LayoutKind.Sequential)]
internal unsafe struct SqliteFileSystem
{
    public int Version;
    public int FileSize;
    public int LongestPath;
    public SqliteFileSystem* Next;
    public byte* Name;
    public void* OwnData;
    public delegate* unmanaged[Cdecl]<SqliteFileSystem*, byte*, OpenFile*, int, int*, int> Open;
    public delegate* unmanaged[Cdecl]<SqliteFileSystem*, byte*, int, int> Delete;
    public void* Access;
    public void* FullPath;
    public void* LoadLibrary;
    public void* LoadError;
    public void* LoadSymbol;
    public void* UnloadLibrary;
    public void* Randomness;
    public void* Sleep;
    public void* CurrentTime;
    public void* LastError;
    public void* CurrentTimeInt64;
    public void* SetSystemCall;
    public void* GetSystemCall;
    public void* NextSystemCall;

    [DllImport("e_sqlite3", EntryPoint = "sqlite3_vfs_find", CallingConvention = CallingConvention.Cdecl)]
    public static extern SqliteFileSystem* Find(byte* name);

    [DllImport("e_sqlite3", EntryPoint = "sqlite3_vfs_register", CallingConvention = CallingConvention.Cdecl)]
    public static extern int Register(SqliteFileSystem* system, int makeDefault);

    [DllImport("e_sqlite3", EntryPoint = "sqlite3_vfs_unregister", CallingConvention = CallingConvention.Cdecl)]
    public static extern int Unregister(SqliteFileSystem* system);
}

/// <summary>The functions of an open file.</summary>
[StructLayout(LayoutKind.Sequential)]
internal unsafe struct FileFunctions
{
    public int Version;
    public delegate* unmanaged[Cdecl]<OpenFile*, int> Close;
    public delegate* unmanaged[Cdecl]<OpenFile*, byte*, int, long, int> Read;
    public delegate* unmanaged[Cdecl]<OpenFile*, byte*, int, long, int> Write;
    public delegate* unmanaged[Cdecl]<OpenFile*, long, int> Truncate;
    public delegate* unmanaged[Cdecl]<OpenFile*, int, int> Sync;
    public delegate* unmanaged[Cdecl]<OpenFile*, long*, int> Size;
    public delegate* unmanaged[Cdecl]<OpenFile*, int, int> Lock;
    public delegate* unmanaged[Cdecl]<OpenFile*, int, int> Unlock;
    public delegate* unmanaged[Cdecl]<OpenFile*, int*, int> CheckReservedLock;
    public delegate* unmanaged[Cdecl]<OpenFile*, int, void*, int> Control;
    public delegate* unmanaged[Cdecl]<OpenFile*, int> SectorSize;
    public delegate* unmanaged[Cdecl]<OpenFile*, int> Characteristics;
    public delegate* unmanaged[Cdecl]<OpenFile*, int, int, int, void**, int> SharedMap;
    public delegate* unmanaged[Cdecl]<OpenFile*, int, int, int, int> SharedLock;
    public delegate* unmanaged[Cdecl]<OpenFile*, void> SharedBarrier;
    public delegate* unmanaged[Cdecl]<OpenFile*, int, int> SharedUnmap;
}

/// <summary>What SQLite holds of an open file: the functions, then what the file system adds. Ours adds a number and the real file behind it.</summary>
[StructLayout(LayoutKind.Sequential)]
internal unsafe struct OpenFile
{
    public FileFunctions* Functions;
    public long Number;

    /// <summary>The real file, which stands right behind in memory.</summary>
    public static OpenFile* Real(OpenFile* ours) => ours + 1;
}
