using Condyle.Host.Reporting;
using Condyle.Runtime;
using Condyle.Runtime.Gltf;

namespace Condyle.Host.Batch;

/// <summary>Each file of clips becomes the delivered file with their bake.</summary>
/// <param name="rig">The rig.</param>
/// <param name="delivered">The file that its skeleton was delivered in.</param>
/// <param name="settings">How they are baked.</param>
/// <param name="folder">Where files are written.</param>
/// <param name="withReports">Whether reports are written beside the files.</param>
internal sealed class DeliveredTarget(CompiledRig rig, GltfFile delivered, BakeSettings settings, string folder, bool withReports) : IBakeTarget
{
    public object Settings => (settings, withReports).ToTuple();

    public IReadOnlyList<string> FilesFor(string name) => [name + ".glb"];

    public (IReadOnlyList<BakeReport> Reports, IReadOnlyList<string> Written) Bake(IReadOnlyList<Clip> clips, string name, CancellationToken cancellation)
    {
        var result = RigBaker.Prepare(rig, delivered, clips, settings).Write(Path.Combine(folder, FilesFor(name)[0]), cancellation: cancellation);
        return (result.Clips, withReports && result.Holds ? [result.File, .. ReportFiles.Write(result)] : [result.File]);
    }
}
