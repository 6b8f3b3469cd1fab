#include "ui/post/postbox.h"

#include <catch2/catch.hpp>

#include <QCoreApplication>
#include <QThread>

#include <algorithm>
#include <memory>
#include <string>
#include <thread>
#include <utility>
#include <vector>

using namespace warmbench::ui;

TEST_CASE("What threads post is done in the owner's thread, each thread's in its order") {
    constexpr int threads = 4;
    constexpr int each = 250;
    Postbox box;
    std::vector<std::pair<int, int>> done;
    const QThread* own = QThread::currentThread();
    bool elsewhere = false;
    {
        std::vector<std::jthread> posting;
        for (int thread = 0; thread < threads; ++thread)
            posting.emplace_back([&, thread] {
                for (int i = 0; i < each; ++i)
                    box.post([&, thread, i] {
                        elsewhere = elsewhere || QThread::currentThread() != own;
                        done.emplace_back(thread, i);
                    });
            });
    }
    CHECK(done.empty()); // nothing is done before the owner comes to it
    QCoreApplication::processEvents();
    CHECK(!elsewhere);
    REQUIRE(done.size() == threads * each);
    std::stable_sort(done.begin(), done.end(), [](auto a, auto b) { return a.first < b.first; });
    for (int i = 0; i < threads * each; ++i)
        CHECK(done[static_cast<std::size_t>(i)] == std::pair(i / each, i % each));
}

TEST_CASE("An errand may post another, and what is left when the box goes is not done") {
    auto box = std::make_unique<Postbox>();
    std::string done;
    box->post([&] {
        done += 'a';
        box->post([&] { done += 'b'; });
    });
    QCoreApplication::processEvents();
    QCoreApplication::processEvents();
    CHECK(done == "ab");
    box->post([&] {
        done += 'c';
        box.reset();
    });
    box->post([&] { done += 'd'; });
    QCoreApplication::processEvents();
    CHECK(done == "abc");
    box = std::make_unique<Postbox>();
    box->post([&] { done += 'e'; });
    box.reset();
    QCoreApplication::processEvents();
    CHECK(done == "abc");
}
