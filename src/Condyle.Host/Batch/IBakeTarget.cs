using Condyle.Runtime;

namespace Condyle.Host.Batch;

/// <summary>What a batch makes of each file of clips. Files are baked side by side.</summary>
internal interface IBakeTarget
{
    /// <summary>What the result depends on besides the rig, the delivered file and the clips; it goes into the hash of the work.</summary>
    object Settings { get; }

    /// <summary>What is told of all files alike.</summary>
    IReadOnlyList<string> Notes => [];

    /// <summary>The names of the files that become of clips of a name; what else lies beside them is called after the first one.</summary>
    IReadOnlyList<string> FilesFor(string name);

    /// <summary>Bakes clips and writes the files.</summary>
    /// <returns>How baked motion compares with live motion, and the files that were written, in full.</returns>
    /// <exception cref="BadInputException">A clip can't be baked, or a file can't be written.</exception>
    (IReadOnlyList<BakeReport> Reports, IReadOnlyList<string> Written) Bake(IReadOnlyList<Clip> clips, string name, CancellationToken cancellation);
}
