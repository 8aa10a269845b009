"""`python -m decks`: the command line, where no script was installed."""

from decks.commands import main

if __name__ == "__main__":
    main()
