#include "core/crop/usual_containers.h"

namespace warmbench {

std::vector<ContainerType> usualContainers() {
    return {{{}, "1-litre pot", {1, 1}, false, Litres{1000}, 5},
            {{}, "deep pot", {1, 1}, false, Litres{1800}, 6},
            {{}, "tray 24", {2, 4}, true, Litres{4300}, 24},
            {{}, "tray 40", {2, 4}, true, Litres{3800}, 40},
            {{}, "tray 84", {2, 4}, true, Litres{3400}, 84},
            {{}, "cold frame bed", {8, 8}, false, Litres{150'000}, 150}};
}

} // namespace warmbench
