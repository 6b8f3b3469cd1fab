#include "app/window/password_keeper.h"

#include <cstdio>
#include <string>

using namespace warmbench;

/// Keeps passwords in the system's key store, finds them, and says what came of it, for keys.sh:
///   faults_keys keep ADDRESS PASSWORD     ends with 0 where it was kept, with 1 where it was refused
///   faults_keys find ADDRESS              writes the password that is kept, nothing where none is
int main(int argc, char** argv) {
    const std::string what = argc > 1 ? argv[1] : "";
    app::SystemKeys keys;
    if (what == "keep" && argc == 4) {
        const Outcome refusal = keys.keep(argv[2], argv[3]);
        if (refusal) std::fprintf(stderr, "%s\n", refusal->text().c_str());
        return refusal ? 1 : 0;
    }
    if (what == "find" && argc == 3) {
        std::fputs(keys.find(argv[2]).c_str(), stdout);
        return 0;
    }
    std::fputs("faults_keys: expected `keep ADDRESS PASSWORD` or `find ADDRESS`\n", stderr);
    return 2;
}
