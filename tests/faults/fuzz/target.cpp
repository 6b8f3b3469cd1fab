#include "tests/faults/fuzz/readers.h"

#include <cstdint>
#include <cstdlib>

/// What libFuzzer calls with the bytes that it makes up, for the reader that FUZZ_READER names.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const warmbench::tests::FuzzedReader* const reader = [] {
        for (const auto& one : warmbench::tests::FUZZ_READERS())
            if (std::string_view(one.name) == FUZZ_READER) return &one;
        std::abort();
    }();
    reader->feed({reinterpret_cast<const char*>(data), size});
    return 0;
}
