namespace Modelling.Output;

public sealed record ModelFile(string Name, byte[] Bytes);
