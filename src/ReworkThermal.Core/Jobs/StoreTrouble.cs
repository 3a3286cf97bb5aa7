namespace ReworkThermal.Core.Jobs;

/// <summary>Kinds of trouble with a job store.</summary>
public enum StoreTrouble
{
    /// <summary>The file or its folder cannot be opened or read.</summary>
    Unreadable,

    /// <summary>The file or its folder cannot be written.</summary>
    NotWritable,

    /// <summary>The file is something else than a job store.</summary>
    NotAStore,

    /// <summary>The file is damaged; it was left as it is.</summary>
    Damaged,

    /// <summary>The file was written by a newer program; it was left as it is.</summary>
    Newer,

    /// <summary>The file was moved away, deleted or replaced while it was open.</summary>
    Gone,

    /// <summary>The disk is full; nothing was changed.</summary>
    DiskFull,

    /// <summary>Another program held the store for too long; nothing was changed.</summary>
    Busy,

    /// <summary>A target file exists already and was left as it is.</summary>
    TargetExists,

    /// <summary>A file to import is not in order or does not fit; nothing was changed.</summary>
    BadImport,
}
