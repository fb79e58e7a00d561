using Condyle.Host;

// The same slips as the build shows, found by running the rigs: dotnet run -- check
return RigProgram.Run(args);
