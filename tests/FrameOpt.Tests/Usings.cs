global using Xunit;


