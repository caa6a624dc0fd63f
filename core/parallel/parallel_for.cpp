#include "core/parallel/parallel_for.h"

#include <algorithm>
#include <atomic>
#include <condition_variable>
#include <memory>
#include <mutex>
#include <thread>
#include <vector>

namespace gauge::core {
namespace {

thread_local bool t_insideParallelFor = false;

/// Other libraries of the process may leave the upper halves of the vector registers in use, and new threads inherit
/// that; on processors with AVX our SSE arithmetic then runs at half its speed. Clearing them costs nothing and changes
/// no value: nothing of ours lives there.
void clearUpperVectorHalves() {
#if defined(__x86_64__)
    static const bool hasAvx = __builtin_cpu_supports("avx");
    if (hasAvx)
        __asm__ volatile("vzeroupper");
#endif
}

/// One parallelFor call: a range that threads take slices of until it is used up.
struct Batch {
    std::size_t count;
    std::size_t grain;
    const std::function<void(std::size_t, std::size_t)>* body;
    std::atomic<std::size_t> next{0};
    std::atomic<std::size_t> finished{0};
    std::mutex doneMutex;
    std::condition_variable done;

    bool exhausted() const { return next.load() >= count; }

    void work() {
        clearUpperVectorHalves();
        for (;;) {
            const std::size_t begin = next.fetch_add(grain);
            if (begin >= count)
                return;
            const std::size_t end = std::min(begin + grain, count);
            (*body)(begin, end);
            if (finished.fetch_add(end - begin) + (end - begin) == count) {
                const std::lock_guard lock(doneMutex);
                done.notify_all();
            }
        }
    }
};

class Pool {
public:
    Pool() {
        const unsigned threads = std::max(1u, std::thread::hardware_concurrency());
        for (unsigned t = 1; t < threads; ++t)
            m_threads.emplace_back([this](std::stop_token stop) { serve(stop); });
    }
    ~Pool() {
        for (auto& thread : m_threads)
            thread.request_stop();
        m_wake.notify_all();
    }

    unsigned threads() const { return static_cast<unsigned>(m_threads.size()) + 1; }

    void run(const std::shared_ptr<Batch>& batch) {
        {
            const std::lock_guard lock(m_mutex);
            m_batches.push_back(batch);
        }
        m_wake.notify_all();
        t_insideParallelFor = true;
        batch->work();
        t_insideParallelFor = false;
        std::unique_lock lock(batch->doneMutex);
        batch->done.wait(lock, [&] { return batch->finished.load() == batch->count; });
    }

private:
    std::shared_ptr<Batch> take() {
        std::erase_if(m_batches, [](const auto& batch) { return batch->exhausted(); });
        return m_batches.empty() ? nullptr : m_batches.front();
    }

    void serve(const std::stop_token& stop) {
        t_insideParallelFor = true;
        std::unique_lock lock(m_mutex);
        while (!stop.stop_requested()) {
            const auto batch = take();
            if (!batch) {
                m_wake.wait(lock, stop, [this] { return take() != nullptr; });
                continue;
            }
            lock.unlock();
            batch->work();
            lock.lock();
        }
    }

    std::mutex m_mutex;
    std::condition_variable_any m_wake;
    std::vector<std::shared_ptr<Batch>> m_batches;
    std::vector<std::jthread> m_threads; // last: joined before the rest is destroyed
};

Pool& pool() {
    static Pool instance;
    return instance;
}

} // namespace

unsigned parallelThreads() {
    return pool().threads();
}

void parallelFor(std::size_t count, std::size_t grain,
                 const std::function<void(std::size_t, std::size_t)>& body) {
    if (count == 0)
        return;
    grain = std::max<std::size_t>(grain, 1);
    if (t_insideParallelFor || count <= grain) {
        clearUpperVectorHalves();
        for (std::size_t begin = 0; begin < count; begin += grain)
            body(begin, std::min(begin + grain, count));
        return;
    }
    const auto batch = std::make_shared<Batch>();
    batch->count = count;
    batch->grain = grain;
    batch->body = &body;
    pool().run(batch);
}

} // namespace gauge::core
