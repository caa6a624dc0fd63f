#include "app/models/cine_player.h"

#include <algorithm>

namespace gauge::app {

CinePlayer::CinePlayer(QObject* parent) : QObject(parent) {
    m_timer.setTimerType(Qt::PreciseTimer);
    m_timer.setInterval(10);
    connect(&m_timer, &QTimer::timeout, this, [this] { advance(static_cast<double>(m_clock.restart()) * m_speed); });
}

void CinePlayer::setCine(const core::FrameTimes& times, int count) {
    setPlaying(false);
    m_times = times;
    m_count = count;
    m_frame = 0;
    m_restMs = 0.0;
    emit frameChanged(m_frame);
}

void CinePlayer::setFrame(int frame) {
    const int held = std::clamp(frame, 0, std::max(0, m_count - 1));
    m_restMs = 0.0;
    if (held == m_frame) return;
    m_frame = held;
    emit frameChanged(m_frame);
}

void CinePlayer::step(int frames) {
    setPlaying(false);
    if (m_count < 1) return;
    const int to = m_frame + frames;
    setFrame(m_loop ? ((to % m_count) + m_count) % m_count : to);
}

void CinePlayer::setPlaying(bool playing) {
    if (playing && m_count < 2) return;
    if (playing == isPlaying()) return;
    if (playing) {
        if (!m_loop && m_frame == m_count - 1) setFrame(0);
        m_restMs = 0.0;
        m_clock.start();
        m_timer.start();
    } else {
        m_timer.stop();
    }
    emit playingChanged(playing);
}

void CinePlayer::setSpeed(double speed) {
    const double held = std::clamp(speed, 0.1, 2.0);
    if (held == m_speed) return;
    m_speed = held;
    emit settingsChanged();
}

void CinePlayer::setLooping(bool loop) {
    if (loop == m_loop) return;
    m_loop = loop;
    emit settingsChanged();
}

double CinePlayer::lastsMs(int frame) const {
    const auto toNext = m_times.betweenMs(frame, frame + 1);
    if (toNext && *toNext > 0.0) return *toNext;
    // The last frame lasts as long as the one before.
    const auto before = m_times.betweenMs(frame - 1, frame);
    return before && *before > 0.0 ? *before : kUntoldFrameMs;
}

void CinePlayer::advance(double ms) {
    if (m_count < 2) return;
    m_restMs += ms;
    int frame = m_frame;
    while (m_restMs >= lastsMs(frame)) {
        m_restMs -= lastsMs(frame);
        if (++frame < m_count) continue;
        if (!m_loop) {
            frame = m_count - 1;
            m_restMs = 0.0;
            setPlaying(false);
            break;
        }
        frame = 0;
    }
    if (frame == m_frame) return;
    m_frame = frame;
    emit frameChanged(m_frame);
}

} // namespace gauge::app
