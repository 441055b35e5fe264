package fingering.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;

/** Which commands there are, and what is set up for one of them. */
class CommandsTest {
  @Test
  void namesAreThoseOfTheAnnotations() {
    for (Class<?> command : Commands.ALL) {
      String name = command.getAnnotation(Command.class).name();
      assertThat(Commands.commandLine(name).getSubcommands()).containsOnlyKeys(name);
    }
    assertThat(Commands.all().getSubcommands()).hasSameSizeAs(Commands.ALL);
  }

  @Test
  void nameIsFoundInAnyCase() {
    assertThat(Commands.commandLine("Compare").getSubcommands()).containsOnlyKeys("compare");
  }

  @Test
  void commandsThatTakeScoresReadThem() {
    Commands.all()
        .getSubcommands()
        .forEach(
            (name, line) ->
                assertThat(Commands.readsScores(name))
                    .as(name)
                    .isEqualTo(takesScores(line.getCommandSpec())));
    assertThat(Commands.readsScores()).isFalse();
    assertThat(Commands.readsScores("--version")).isFalse();
  }

  /** The server of the page prepares itself when it runs. */
  private static boolean takesScores(CommandSpec command) {
    return command.name().equals(DemoCommand.NAME)
        || command.positionalParameters().stream()
            .anyMatch(parameter -> parameter.paramLabel().matches("SCORE(\\.\\.\\.)?"));
  }
}
