return Condyle.Host.RigProgram.Run(args);
