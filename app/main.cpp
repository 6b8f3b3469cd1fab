#include "app/command/program.h"

int main(int argc, char** argv) {
    return warmbench::app::runProgram(argc, argv);
}
